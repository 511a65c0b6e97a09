import { keptChoice, ownStorage } from './kept-choice.ts';
import './styles/paint.css';
import './styles/ground.css';
import './styles/frame.css';
import './styles/board.css';
import './styles/wall.css';
import './styles/wall-sizes.css';
import './styles/button.css';
import './styles/offline.css';
import { firstWords, wallWording } from './words/catalogue.ts';
import { preferredLanguage } from './words/language.ts';

// The words are on their way before the script of the pages has run: it asks for the same ones, and
// tells when they cannot be had.
const language = keptChoice(ownStorage()).read().language ?? preferredLanguage(navigator.languages);
for (const words of [firstWords(language), wallWording(language)]) words.catch(() => {});
void import('./main.tsx');

// What all pages but the wall need; fetched with the first of them.
import { keepFocus } from './focus-keeper.ts';
import './page-styles.ts';

keepFocus(document);

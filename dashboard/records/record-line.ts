import type { SiteRecord } from '../../daemon/contract/record.ts';
import { builtInName } from '../../daemon/wording/built-in-name.ts';
import { plainList } from '../format/lists.ts';
import { reading } from '../format/reading.ts';
import type { Reader } from '../reader.ts';

type By = Pick<Reader, 'words' | 'figures' | 'units' | 'say'>;

/** What was recorded, as one line in the reader’s words; empty where the kind says it all. */
export function recordLine(record: SiteRecord, by: By): string {
  const { words, figures } = by;
  const { records: said, jobs, things } = words;
  const boards = record.boards === null ? '' : things.boards(record.boards);
  switch (record.kind) {
    case 'batch':
      return said.begun(boards);
    case 'coat': {
      const facts = [
        record.usedL === null ? null : figures.measure('litres', record.usedL),
        record.colour,
        record.tin,
      ].filter((fact) => fact !== null);
      return said.coat(by.say(builtInName(record.coatName ?? '')), plainList(facts));
    }
    case 'test': {
      if (record.gate === null) return '';
      const { infinitive } = jobs[record.gate];
      return record.passed === true ? said.felt(infinitive) : said.notYet(infinitive);
    }
    case 'remark': {
      const kind = record.remark === null ? '' : things.remarks[record.remark];
      return record.text === null ? kind : said.remark(kind, record.text);
    }
    case 'hand-reading': {
      const { quantity, values } = record;
      if (quantity === null) return '';
      const figuresRead = values.map((value) => reading(quantity, value, by)).join(' · ');
      return said.remark(things.quantities[quantity], figuresRead);
    }
    case 'photo':
      return record.text ?? '';
    case 'split':
      return said.splitOff(boards, record.otherBatchName ?? '');
    case 'merge':
      return said.putTo(boards, record.otherBatchName ?? '');
    case 'move':
      return '';
  }
}

import { describe, expect, it } from 'vitest';
import { topicBook } from '../../daemon/ingest/topic-book.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const bookOf = (maxTopics = 10) => topicBook({ maxTopics, maxBytes: 8 });
const topicsOf = (book: ReturnType<typeof topicBook>) => book.topics().map(({ topic }) => topic);

describe('the book of topics', () => {
  it('keeps the last five messages of a topic, cut to what it may keep', () => {
    const book = bookOf();
    for (let i = 0; i < 8; i++) book.note('a', bytes(`message number ${i}`), i, false);
    const [heard] = book.topics();
    expect(heard).toMatchObject({ topic: 'a', count: 8, firstAt: 0 });
    expect(heard?.messages.map(({ at }) => at)).toEqual([3, 4, 5, 6, 7]);
    expect(heard?.messages[0]).toMatchObject({ payload: bytes('message '), bytes: 16 });
    expect(heard?.messages[0]?.payload.buffer.byteLength).toBe(8);
  });

  it('is full of made-up topics and still keeps the sensor that has spoken more than once', () => {
    const book = bookOf();
    for (const at of [-2, -1]) book.note('sensor', bytes('21.5'), at, false);
    for (let i = 0; i < 1000; i++) {
      book.note(`made-up/${i}`, bytes('x'), i, false);
    }
    expect(book.topics()).toHaveLength(10);
    expect(topicsOf(book)).toContain('sensor');
  });

  it('leaves new topics out, and counts them, when all are in use; a silent one makes room', () => {
    const book = bookOf(2);
    for (const at of [0, 1])
      for (const topic of ['a', 'b']) book.note(topic, bytes('1'), at, false);
    book.note('c', bytes('1'), 2, false);
    expect([topicsOf(book), book.leftOut()]).toEqual([['a', 'b'], 1]);
    book.note('b', bytes('1'), 3, false);
    book.note('c', bytes('1'), 3_600_001, false);
    expect(topicsOf(book)).toEqual(['c', 'b']);
  });

  it('shows what a broker kept, but does not count it, nor put it after what was sent since', () => {
    const book = bookOf();
    book.note('a', bytes('old'), 0, true);
    book.note('a', bytes('old'), 1, true);
    expect(book.topics()).toMatchObject([{ count: 0, messages: [{ retained: true, at: 0 }] }]);
    book.note('a', bytes('new'), 2, false);
    book.note('a', bytes('old'), 3, true);
    expect(book.topics()).toMatchObject([{ count: 1, messages: [{ at: 0 }, { at: 2 }] }]);
  });

  it('does not remember a topic of any length, and none at all where it may not', () => {
    const book = bookOf();
    book.note('a'.repeat(60_000), bytes('1'), 0, false);
    expect([topicsOf(book), book.leftOut()]).toEqual([[], 1]);
    const none = bookOf(0);
    none.note('a', bytes('1'), 0, false);
    expect(topicsOf(none)).toEqual([]);
  });
});

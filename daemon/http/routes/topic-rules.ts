import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import type { TopicRule, TopicRuleForm } from '../../contract/topic-rule.ts';
import { referred } from '../../rules/record-check.ts';
import {
  changedForm,
  ruleForm,
  type TopicRuleFact,
  topicRuleReply,
} from '../../rules/topic-rule-fact.ts';
import { sentence } from '../../wording/english.ts';
import { inner } from '../../wording/sentence.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** Room between two rules, so that one can be put between them. */
const orderStep = 10;
const usualMinutes = 10;

export function topicRuleRoutes(
  app: FastifyInstance,
  { topicRules: port, view, now, newId }: HttpParts,
): void {
  const reply = (rule: TopicRuleFact): TopicRule => topicRuleReply(rule, port.hiddenBy(rule.id));

  function ruleById(id: string): TopicRuleFact {
    const rule = port.all().find((one) => one.id === id);
    if (rule) return rule;
    const said = sentence('no-such-thing', { thing: 'topic-rule', id });
    throw new BoardcureError('BC_THING_UNKNOWN', said);
  }

  /** @throws BoardcureError naming everything that is wrong with it */
  function checkRule(form: TopicRuleForm, id: string | null): void {
    const faults = port.faults(form, id);
    if (faults.length === 0) return;
    const listed = faults.map(({ pointer, detailSaid }) =>
      inner(sentence('field-at', { pointer, fault: inner(detailSaid) })),
    );
    const said = sentence('in-rule', { faults: listed });
    throw new BoardcureError('BC_REQUEST_INVALID', said, { faults });
  }

  register(app, 'listTopicRules', () => port.all().map(reply));

  register(app, 'createTopicRule', async ({ body }) => {
    const { id = newId(), placeId = null, order, ...draft } = body;
    const form = ruleForm(draft);
    const rules = port.all();
    const isKnown = rules.some((rule) => rule.id === id);
    checkRule(form, isKnown ? id : null);
    if (placeId !== null) referred(view.facts().places, placeId, 'place', '/placeId');
    if (!isKnown && rules.length >= port.maxRules) {
      throw new BoardcureError(
        'BC_STATE_CONFLICT',
        sentence('too-many-rules', { rules: rules.length }),
      );
    }
    const at = now();
    const last = Math.max(0, ...rules.map((rule) => rule.order));
    const rule = { id, order: order ?? last + orderStep, form, createdAt: at, changedAt: at };
    const heard =
      placeId === null
        ? []
        : [...port.sensorsOf(draft)].map(([sensor, heardAt]) => ({ id: sensor, placeId, heardAt }));
    await port.create(rule, heard);
    return reply(ruleById(id));
  });

  register(app, 'tryTopicRule', ({ body }) => {
    const { id = null, rule } = body;
    const order = rule.order ?? (id === null ? Number.POSITIVE_INFINITY : ruleById(id).order);
    const before = new Set(
      port
        .all()
        .filter((one) => one.id !== id && one.order <= order)
        .map((one) => one.id),
    );
    return port.tryOut(body, (one) => before.has(one), id);
  });

  register(app, 'changeTopicRule', async ({ params, body }) => {
    const rule = ruleById(params.id);
    const form = changedForm(rule.form, body);
    checkRule(form, rule.id);
    await port.change({ ...rule, form, order: body.order ?? rule.order }, now());
    return reply(ruleById(rule.id));
  });

  register(app, 'removeTopicRule', async ({ params }) => {
    await port.remove(ruleById(params.id).id, now());
    return port.all().map(reply);
  });

  register(app, 'foundTopics', () => port.discovery());

  register(app, 'listenForTopics', async ({ body }) => {
    const minutes = body.minutes ?? usualMinutes;
    await port.listenUntil(minutes === 0 ? null : now() + minutes * 60_000);
    return port.discovery();
  });
}

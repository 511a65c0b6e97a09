import { z } from 'zod';
import { Discovery, NewListening, RuleTrial, RuleTrialReply } from '../found-topic.ts';
import type { Route } from '../route.ts';
import { NewTopicRule, TopicRule, TopicRuleChange } from '../topic-rule.ts';
import { ById } from './params.ts';

export const topicRuleRoutes = {
  listTopicRules: {
    method: 'GET',
    path: '/api/v1/topic-rules',
    summary: 'The rules by which other topics become readings, in their order',
    status: 200,
    reply: z.array(TopicRule),
  },
  createTopicRule: {
    method: 'POST',
    path: '/api/v1/topic-rules',
    summary: 'Make a rule, and place the sensors that have been heard on its topics',
    body: NewTopicRule,
    status: 201,
    reply: TopicRule,
  },
  tryTopicRule: {
    method: 'POST',
    path: '/api/v1/topic-rules/try',
    summary: 'What a rule would make of the last messages, before it is saved',
    body: RuleTrial,
    status: 200,
    reply: RuleTrialReply,
  },
  changeTopicRule: {
    method: 'PATCH',
    path: '/api/v1/topic-rules/:id',
    summary: 'Change a rule (what it was is kept); readings taken before stay as they are',
    params: ById,
    body: TopicRuleChange,
    status: 200,
    reply: TopicRule,
  },
  removeTopicRule: {
    method: 'DELETE',
    path: '/api/v1/topic-rules/:id',
    summary: 'Take a rule away (it is kept, marked as taken away); its readings stay',
    params: ById,
    status: 200,
    reply: z.array(TopicRule),
  },
  foundTopics: {
    method: 'GET',
    path: '/api/v1/found-topics',
    summary: 'Topics that no rule knows and that look like readings, with their last message',
    status: 200,
    reply: Discovery,
  },
  listenForTopics: {
    method: 'POST',
    path: '/api/v1/found-topics/listen',
    summary: 'Listen to every topic of another broker for a while',
    body: NewListening,
    status: 200,
    reply: Discovery,
  },
} as const satisfies Record<string, Route>;

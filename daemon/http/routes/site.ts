import type { FastifyInstance, FastifyRequest } from 'fastify';
import { toMoment } from '../../contract/moment.ts';
import type { Overview } from '../../contract/overview.ts';
import { BoardcureError } from '../../contract/problem.ts';
import { noticeReply } from '../../rules/fact-reply.ts';
import { stayAt } from '../../rules/place.ts';
import { sentence } from '../../wording/english.ts';
import { askerOf } from '../access-gate.ts';
import { writingOf } from '../asker-writing.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** The whole site at a glance; what differs by who asks is left out. */
export function siteOverview(parts: HttpParts): Omit<Overview, 'mayWrite' | 'writing'> {
  const { site, ownSite, view, health, settings, now, speed } = parts;
  const at = now();
  const { intake, broker, connected, reasons, reasonsSaid } = health();
  const { sensors, stays } = view.facts();
  return {
    site,
    siteName: ownSite.name(),
    now: toMoment(at),
    speed: speed(),
    intake: {
      accepted: intake.accepted,
      duplicates: intake.duplicates,
      refused: intake.refused,
      broker,
      connected,
      refusing: intake.refusing,
    },
    doubts: reasons,
    doubtsSaid: reasonsSaid,
    unplacedSensors: [...sensors.values()].filter(
      (sensor) => stayAt(stays.get(sensor.key) ?? [], at) === null,
    ).length,
    places: view.places(at),
    notices: view
      .notices()
      .filter((notice) => notice.clearedAt === null && notice.seenAt === null)
      .map(noticeReply),
    settingChanges: settings.changes(),
  };
}

export function siteRoutes(app: FastifyInstance, parts: HttpParts): void {
  const { view, edits, readings, health, now } = parts;

  register(app, 'health', () => {
    const { connected: _, ...rest } = health();
    return { ...rest, now: toMoment(now()) };
  });

  register(app, 'overview', (_call, request: FastifyRequest) => ({
    ...siteOverview(parts),
    ...writingOf(askerOf(request, parts.access), parts.access),
  }));

  register(app, 'listNotices', () => view.notices().map(noticeReply));

  register(app, 'readNoticeChannels', () => view.noticeChannels());

  register(app, 'changeNotice', async ({ params }) => {
    const find = () => view.notices().find((one) => one.id === params.id);
    if (!find()) {
      const said = sentence('no-such-thing', { thing: 'notice', id: params.id });
      throw new BoardcureError('BC_THING_UNKNOWN', said);
    }
    await edits.seeNotice(params.id, now());
    const notice = find();
    if (!notice) throw new Error(`The notice ${params.id} is gone.`);
    return noticeReply(notice);
  });

  register(app, 'listRefused', () =>
    readings.refused().map((message) => ({ ...message, at: toMoment(message.at) })),
  );
}

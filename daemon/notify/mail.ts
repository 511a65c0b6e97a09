import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import { SaidError } from '../wording/said-error.ts';
import type { Channel } from './channel.ts';

export interface MailParts {
  host: string;
  port: number;
  security: 'starttls' | 'tls' | 'none';
  user: string | null;
  password: string | null;
  from: string;
  to: readonly string[];
  timeoutMs: number;
  site: string;
}

/** Sends notices as plain text by any SMTP server; a message keeps its Message-ID at every try. */
export function mailChannel(parts: MailParts): Channel {
  const { host, port, security, user, password, from, to, timeoutMs, site } = parts;
  const domain = from.slice(from.lastIndexOf('@') + 1);

  return {
    name: 'mail',
    async send({ message, title, text }, signal) {
      // Loaded by whoever sends mail, and by nobody else.
      const { createTransport } = await import('nodemailer');
      // A connection of its own for each message: notices are rare, and a server that went away
      // in the night is then no half-open surprise.
      const transport = createTransport({
        host,
        port,
        secure: security === 'tls',
        requireTLS: security === 'starttls',
        ignoreTLS: security === 'none',
        connectionTimeout: timeoutMs,
        greetingTimeout: timeoutMs,
        socketTimeout: timeoutMs,
        disableFileAccess: true,
        disableUrlAccess: true,
        ...(user === null ? {} : { auth: { user, pass: password ?? '' } }),
      });
      const stop = () => transport.close();
      signal.addEventListener('abort', stop, { once: true });
      try {
        await transport.sendMail({
          from,
          to: [...to],
          subject: `${site}: ${title}`,
          text: `${text}\n`,
          messageId: `<${message.id.replace(/[^A-Za-z0-9.-]/g, '-')}@${domain}>`,
          date: new Date(message.createdAt),
          headers: { 'auto-submitted': 'auto-generated' },
        });
      } catch (cause) {
        throw new SaidError(failureSaid(cause as SmtpFailure), { cause });
      } finally {
        signal.removeEventListener('abort', stop);
        transport.close();
      }
    },
  };
}

interface SmtpFailure extends Error {
  code?: string;
  responseCode?: number;
}

/** Says what went wrong without what a server’s answer may repeat: names, addresses, passwords. */
function failureSaid({ code, responseCode: status }: SmtpFailure): Said {
  if (code === 'EAUTH') return sentence('mail-failed/log-in', {});
  if (code === 'ETIMEDOUT') return sentence('mail-failed/late', {});
  if (code === 'ETLS') return sentence('mail-failed/tls', {});
  if (status !== undefined) return sentence('mail-failed/refused', { status });
  return sentence('mail-failed/away', { because: code ?? '?' });
}

import { execFile } from 'node:child_process';
import { randomBytes, X509Certificate } from 'node:crypto';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { permittedNames } from '../rules/certificate-names.ts';

const run = promisify(execFile);

/** Nodes are told once which certificate vouches for this computer; it should outlive them. */
const authorityDays = 7300;
/** What browsers take at most. From memory: 398 days since 2020. */
const certificateDays = 397;
const renewBeforeDays = 30;
const dayMs = 86_400_000;

/** Certificate and key, as PEM text. */
export interface TlsPair {
  cert: string;
  key: string;
}

export interface MadeCertificateParts {
  /** The folder `tls` in the data folder. */
  folder: string;
  /** Who it is for, as a person reads it. */
  title: string;
  /** DNS names and IP addresses of this computer that may stand in it. */
  names: readonly string[];
  /** UTC epoch ms. */
  now: number;
}

/**
 * A certificate for this computer, made by an authority of its own and made anew in time; nodes and
 * browsers that trust the authority need not be told. The authority can vouch for names and
 * addresses of local networks only, so that whoever steals its key gains nothing beyond them.
 *
 * @throws Error saying what to do when it cannot be made
 */
export async function madeCertificate(parts: MadeCertificateParts): Promise<TlsPair> {
  const { folder } = parts;
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  if (!existsSync(join(folder, 'ca-cert.pem'))) await makeAuthority(parts);
  if (!holds(parts)) await makeCertificate(parts);
  return {
    // With the authority behind it, for clients that were told of neither.
    cert: read(folder, 'cert.pem') + read(folder, 'ca-cert.pem'),
    key: read(folder, 'key.pem'),
  };
}

/** The certificate of the authority, to be put into nodes and browsers; null where none was made. */
export function authorityOf(folder: string): string | null {
  const file = join(folder, 'ca-cert.pem');
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}

const read = (folder: string, name: string) => readFileSync(join(folder, name), 'utf8');

function holds({ folder, names, now }: MadeCertificateParts): boolean {
  if (!existsSync(join(folder, 'cert.pem')) || !existsSync(join(folder, 'key.pem'))) return false;
  const certificate = new X509Certificate(read(folder, 'cert.pem'));
  const endsAt = Date.parse(certificate.validTo);
  // A clock that was never set must not throw a good certificate away.
  const begun = Date.parse(certificate.validFrom) <= now + dayMs;
  if (begun && endsAt - now < renewBeforeDays * dayMs) return false;
  if (!certificate.checkIssued(new X509Certificate(read(folder, 'ca-cert.pem')))) return false;
  return names.every((name) =>
    isAddress(name) ? certificate.checkIP(name) : certificate.checkHost(name),
  );
}

const isAddress = (name: string): boolean => /^[\d.]+$/.test(name) || name.includes(':');

function makeAuthority({ folder, title }: MadeCertificateParts): Promise<void> {
  const permitted = permittedNames.map((name) => `permitted;${name}`).join(',');
  const settings = [
    '[req]',
    'distinguished_name = who',
    'x509_extensions = authority',
    'prompt = no',
    'string_mask = utf8only',
    '[who]',
    `CN = ${title}`,
    '[authority]',
    'basicConstraints = critical,CA:TRUE,pathlen:0',
    'keyUsage = critical,keyCertSign,cRLSign',
    'subjectKeyIdentifier = hash',
    `nameConstraints = critical,${permitted}`,
  ];
  return inScratch(folder, async (scratch, put) => {
    writeFileSync(join(scratch, 'ca.cnf'), settings.join('\n'));
    await openssl(scratch, [
      ...['req', '-x509', '-config', 'ca.cnf', '-days', String(authorityDays), '-nodes'],
      ...['-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256'],
      ...['-set_serial', serial(), '-keyout', 'ca-key.pem', '-out', 'ca-cert.pem'],
    ]);
    put('ca-key.pem');
    put('ca-cert.pem');
  });
}

function makeCertificate({ folder, names, title }: MadeCertificateParts): Promise<void> {
  const alternatives = names.map((name) => `${isAddress(name) ? 'IP' : 'DNS'}:${name}`).join(',');
  const settings = ['[req]', 'distinguished_name = who', 'prompt = no', '[who]', `CN = ${title}`];
  const extensions = [
    'basicConstraints = critical,CA:FALSE',
    'keyUsage = critical,digitalSignature',
    'extendedKeyUsage = serverAuth',
    `subjectAltName = ${alternatives}`,
  ];
  return inScratch(folder, async (scratch, put) => {
    writeFileSync(join(scratch, 'req.cnf'), settings.join('\n'));
    writeFileSync(join(scratch, 'ext.cnf'), extensions.join('\n'));
    await openssl(scratch, [
      ...['req', '-new', '-config', 'req.cnf', '-nodes', '-keyout', 'key.pem', '-out', 'csr.pem'],
      ...['-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256'],
    ]);
    await openssl(scratch, [
      ...['x509', '-req', '-in', 'csr.pem', '-days', String(certificateDays), '-sha256'],
      ...['-CA', join(folder, 'ca-cert.pem'), '-CAkey', join(folder, 'ca-key.pem')],
      ...['-set_serial', serial(), '-extfile', 'ext.cnf', '-out', 'cert.pem'],
    ]);
    put('key.pem');
    put('cert.pem');
  });
}

const serial = (): string => `0x00${randomBytes(16).toString('hex')}`;

/** Works aside, so that what is cut short leaves no half a pair. */
async function inScratch(
  folder: string,
  act: (scratch: string, put: (name: string) => void) => Promise<void>,
): Promise<void> {
  const scratch = mkdtempSync(join(folder, 'making-'));
  try {
    await act(scratch, (name) => {
      chmodSync(join(scratch, name), 0o600);
      renameSync(join(scratch, name), join(folder, name));
    });
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

async function openssl(cwd: string, args: string[]): Promise<void> {
  try {
    await run('openssl', args, { cwd, env: { ...process.env, LC_ALL: 'C' } });
  } catch (cause) {
    const { code, stderr } = cause as NodeJS.ErrnoException & { stderr?: string };
    throw new Error(
      code === 'ENOENT'
        ? 'A certificate cannot be made: openssl is not installed. Install it (Debian: apt-get install openssl), or name your own under tls.certFile and tls.keyFile.'
        : `A certificate cannot be made: ${String(stderr ?? cause)
            .trim()
            .slice(-300)}`,
      { cause },
    );
  }
}

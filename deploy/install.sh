#!/bin/sh
# Installs boardcure on a Debian-family computer, upgrades it, takes an upgrade back, removes it.
#
# The programs of each version lie whole in /opt/boardcure/versions; the link `current` says which one
# runs. Readings are in /var/lib/boardcure, settings in /etc/boardcure: neither is touched by a version.
# For tests, DESTDIR puts all of it below another folder, and BOARDCURE_SYSTEMCTL stands in for systemctl.
set -eu

usage() {
  cat <<'USAGE'
install.sh install   [artefact.tar.gz]   install, or upgrade what is installed
install.sh upgrade   [artefact.tar.gz]   the same, when something is installed
install.sh rollback                      back to the version before the last upgrade
install.sh uninstall [--purge]           remove the programs; with --purge readings and settings too
install.sh status                        what is installed, and whether it runs

  --node <file>    a Node.js program to run it with, instead of the computer's own; it is copied
  --wait <s>       how long a start may take before it counts as failed (default 900)
  --no-start       neither start nor enable the service

Without an artefact the folder that this script lies in is installed. Run it as root (sudo).
USAGE
}

say() { printf 'boardcure: %s\n' "$*" >&2; }

# fail <what was wrong> <what to do>
fail() {
  say "$1"
  printf '  what to do: %s\n' "$2" >&2
  exit 1
}

root=${DESTDIR:-}
opt=$root/opt/boardcure
data=$root/var/lib/boardcure
etc=$root/etc/boardcure
units=$root/etc/systemd/system
wrapper=$root/usr/local/bin/boardcure
here=$(dirname "$(readlink -f "$0")")
user=boardcure
wait_s=900
start=yes
purge=no
node_file=
artefact=
command=
staged=

cleanup() { if [ -n "$staged" ]; then rm -rf "$staged"; fi; }
trap cleanup EXIT
trap 'exit 129' HUP
trap 'exit 130' INT
trap 'exit 143' TERM

# --- what there is ---------------------------------------------------------------------------------

# Of a link below DESTDIR only its last part counts.
version_at() { if [ -L "$opt/$1" ]; then basename "$(readlink "$opt/$1")"; fi; }

has_systemd() { [ -n "${BOARDCURE_SYSTEMCTL:-}" ] || { [ -z "$root" ] && [ -d /run/systemd/system ]; }; }

# Without a running systemd (a container, a folder) there is nothing to be asked; a unit can be enabled.
service() {
  if has_systemd; then "${BOARDCURE_SYSTEMCTL:-systemctl}" "$@"; fi
}

as_user() {
  if [ -z "$root" ] && [ "$(id -u)" = 0 ]; then runuser -u "$user" -- "$@"; else "$@"; fi
}

# Kilobytes that are free where a folder is or will be.
free_kb() {
  folder=$1
  while [ ! -d "$folder" ]; do folder=$(dirname "$folder"); done
  df -Pk "$folder" | awk 'NR == 2 { print $4 }'
}

size_kb() { if [ -e "$1" ]; then du -sk "$1" | cut -f1; else echo 0; fi; }

# Where the settings put the readings. Sets $data and $database. Needs $node and the program in $1.
find_data() {
  if [ -f "$etc/boardcure.toml" ]; then
    folder=$(cd "$1" && "$node" --input-type=module -e '
      import { readFileSync } from "node:fs";
      import { parse } from "smol-toml";
      console.log(parse(readFileSync(process.argv[1], "utf8")).data ?? "");' "$etc/boardcure.toml") ||
      fail "$etc/boardcure.toml cannot be read" 'mend it first: sudo boardcure doctor tells what is wrong'
    case $folder in /*) data=$root$folder ;; esac
  fi
  database=$data/boardcure.sqlite
}
database=$data/boardcure.sqlite

# --- checks ----------------------------------------------------------------------------------------

need_root() {
  [ -n "$root" ] || [ "$(id -u)" = 0 ] ||
    fail 'this needs the rights of root' "run: sudo $0 $command"
}

check_board() {
  case $(uname -m) in
    x86_64 | aarch64) ;;
    armv6l | armv7l | i686)
      fail "this system is of 32 bits ($(uname -m))" \
        'put a 64-bit system on the card; boards of the last ten years can run one' ;;
    *) fail "there is no build for $(uname -m)" 'use a computer with an arm64 or amd64 processor' ;;
  esac
}

# The Node that will run it: one given now, one given before, or the computer's own.
find_node() {
  if [ -n "$node_file" ]; then
    [ -x "$node_file" ] || fail "$node_file is no program" 'give --node the file bin/node of a Node.js archive'
    node=$node_file
  elif [ -x "$opt/node/node" ]; then
    node=$opt/node/node
  else
    node=$(command -v node || command -v nodejs || true)
  fi
  [ -n "$node" ] || fail 'there is no Node.js on this computer' \
    'apt-get install nodejs; where that is older than 20, fetch a newer one and give it with --node'
  node=$(readlink -f "$node")
  major=$("$node" -p 'process.versions.node.split(".")[0]' 2>/dev/null || echo 0)
  [ "$major" -ge 20 ] || fail "$node is Node $("$node" --version 2>/dev/null || echo that does not run here), and boardcure needs 20 or newer" \
    'upgrade the system (Debian 13 brings Node 20), or fetch a newer Node.js and give it with --node'
  if [ -z "$root" ] && [ -z "$node_file" ]; then
    case $node in
      /home/* | /root/*) fail "$node lies in a home folder, which the service may not read" \
        "give it with --node $node: it is copied" ;;
    esac
  fi
}

check_space() {
  need=$((50 * 1024 + $(size_kb "$database") + $(size_kb "$database-wal")))
  [ "$(free_kb "$data")" -ge "$need" ] ||
    fail "only $(($(free_kb "$data") / 1024)) MiB are free below $data" \
      "make room for $((need / 1024)) MiB: the database is copied before an upgrade"
}

# --- steps -----------------------------------------------------------------------------------------

# What is unpacked takes about 60 MB.
check_room_for_programs() {
  need=$((200 * 1024))
  [ "$(free_kb "$opt")" -ge "$need" ] ||
    fail "only $(($(free_kb "$opt") / 1024)) MiB are free below $opt" "make room for $((need / 1024)) MiB"
}

# Lays the new version beside the others; it is not in use yet. Sets $staged and $version.
stage() {
  check_room_for_programs
  mkdir -p "$opt/versions"
  rm -rf "$opt/versions"/.new-*
  staged=$opt/versions/.new-$$
  mkdir "$staged"
  if [ -n "$artefact" ]; then
    [ -f "$artefact" ] || fail "there is no file $artefact" 'give the name of the artefact, boardcure-<version>.tar.gz'
    if [ -f "$artefact.sha256" ]; then
      (cd "$(dirname "$artefact")" && sha256sum --check --status "$(basename "$artefact").sha256") ||
        fail "$artefact is not what its checksum says" 'fetch it again'
    fi
    tar -xzf "$artefact" -C "$staged" --strip-components=1 --no-same-owner ||
      fail "$artefact cannot be unpacked" 'fetch it again'
  else
    [ -d "$here/program" ] || fail "$here is no unpacked artefact" \
      "give its file: $0 $command boardcure-<version>.tar.gz (npm run release makes one)"
    cp -R "$here/." "$staged"
  fi
  [ -f "$staged/program/boardcure.mjs" ] || fail 'this is no artefact of boardcure' 'give boardcure-<version>.tar.gz'
  version=$("$node" -p 'JSON.parse(require("fs").readFileSync(process.argv[1])).version' "$staged/package.json")
  # The whole point of bringing the engine ready-made; better found out now than when the old one is stopped.
  (cd "$staged" && "$node" -e 'new (require("better-sqlite3"))(":memory:").close()') 2>"$staged/.trial" || {
    cat "$staged/.trial" >&2
    fail "the database engine in this artefact does not run with $("$node" --version) on this $(uname -m) system" \
      'use Node 20, 22 or 24 on Debian 12 or newer (or a system as new), or make an artefact for it with npm run release'
  }
  rm -f "$staged/.trial"
}

make_user() {
  if [ -n "$root" ]; then return 0; fi
  if ! getent passwd "$user" >/dev/null; then
    useradd --system --user-group --home-dir "$data" --no-create-home --shell /usr/sbin/nologin "$user"
  fi
}

owned() { if [ -z "$root" ]; then chown "$@"; fi; }

make_folders() {
  mkdir -p "$data" "$etc" "$units" "$(dirname "$wrapper")"
  owned "$user:$user" "$data"
  owned "root:$user" "$etc"
  chmod 750 "$data"
  # The file itself may hold a password; other settings in the folder are for other users.
  chmod 755 "$etc"
}

# Settings that are there are never written over; the example of each version lies beside its programs.
put_settings() {
  if [ ! -e "$etc/boardcure.toml" ]; then
    {
      echo '# Settings of boardcure; all there are: /opt/boardcure/current/deploy/boardcure.toml'
      echo '# After a change: systemctl reload boardcure (what needs a restart is said in its log).'
      echo
      echo 'data = "/var/lib/boardcure"'
    } >"$etc/boardcure.toml"
    owned "root:$user" "$etc/boardcure.toml"
    chmod 640 "$etc/boardcure.toml"
  fi
}

put_node() {
  if [ -n "$node_file" ]; then
    mkdir -p "$opt/node"
    if [ -e "$opt/node/node" ]; then cp -p "$opt/node/node" "$opt/node/before"; fi
    cp "$node_file" "$opt/node/.new"
    chmod 755 "$opt/node/.new"
    mv -f "$opt/node/.new" "$opt/node/node"
  fi
}

# Names a version as the one in use: its link, its unit, its command.
use() {
  ln -sfn "versions/$1" "$opt/.current.new"
  mv -Tf "$opt/.current.new" "$opt/current"
  for unit in "$opt/current/deploy"/*.service; do
    cp "$unit" "$units/$(basename "$unit").new"
    mv -f "$units/$(basename "$unit").new" "$units/$(basename "$unit")"
  done
  cat >"$wrapper.new" <<'WRAPPER'
#!/bin/sh
# boardcure with the settings of this computer, as the user that the service runs as.
BOARDCURE_CONFIG=${BOARDCURE_CONFIG:-/etc/boardcure/boardcure.toml}
export BOARDCURE_CONFIG
program=/opt/boardcure/current/bin/boardcure
if [ "$(id -u)" = 0 ]; then exec runuser -u boardcure -- "$program" "$@"; fi
exec "$program" "$@"
WRAPPER
  chmod 755 "$wrapper.new"
  mv -f "$wrapper.new" "$wrapper"
  service daemon-reload
}

# Starts the service and waits until it says that it is ready.
start_service() {
  if [ "$start" = no ]; then return 0; fi
  if ! has_systemd; then
    if [ -z "$root" ] && command -v systemctl >/dev/null; then systemctl enable boardcure.service 2>/dev/null || true; fi
    say 'systemd does not run here: start it with  boardcure serve'
    return 0
  fi
  service enable --quiet boardcure.service
  timeout "$wait_s" "${BOARDCURE_SYSTEMCTL:-systemctl}" start boardcure.service &&
    service is-active --quiet boardcure.service || return 1
  # Its companions, where they are used, come from the same version.
  for unit in "$opt/current/deploy"/boardcure-*.service; do
    if [ -e "$unit" ]; then service try-restart "$(basename "$unit")" || true; fi
  done
}

stop_service() { service stop boardcure.service || true; }

# The version of the tables in a database, as a number.
tables_in() {
  as_user "$node" -e '
    const Database = require(process.argv[1] + "/node_modules/better-sqlite3");
    const db = new Database(process.argv[2], { readonly: true });
    console.log(db.pragma("user_version", { simple: true }));' "$1" "$2"
}

link_previous() {
  ln -sfn "versions/$1" "$opt/.previous.new"
  mv -Tf "$opt/.previous.new" "$opt/previous"
}

# Copies the database with the program that wrote it. Sets $copy; empty when there is no database.
copy_database() {
  copy=
  if [ ! -e "$database" ]; then return 0; fi
  mkdir -p "$data/upgrades"
  owned "$user:$user" "$data/upgrades"
  copy=$data/upgrades/before-$version-$(date -u +%Y%m%dT%H%M%SZ).sqlite
  as_user "$opt/current/bin/boardcure" backup "$copy" --data "$data" >&2 || return 1
}

# Goes back from a version that is stopped to an earlier one. The newer database stays where the earlier
# program can read it; else the copy from before the upgrade takes its place, and it is kept aside.
go_back() {
  to=$1
  saved=$2
  if [ -e "$opt/node/before" ]; then mv -f "$opt/node/before" "$opt/node/node"; fi
  use "$to"
  if [ -n "$saved" ] && [ -e "$saved" ] && [ -e "$database" ]; then
    if [ "$(tables_in "$opt/versions/$to" "$database")" != "$(tables_in "$opt/versions/$to" "$saved")" ]; then
      say "version $to cannot read the newer database: the copy from before the upgrade takes its place"
      as_user "$opt/current/bin/boardcure" restore "$saved" --replace --data "$data" >&2 ||
        fail "the copy $saved could not be put back" "boardcure restore $saved --replace, then systemctl start boardcure"
    fi
  fi
}

prune() {
  for old in "$opt/versions"/*; do
    name=$(basename "$old")
    if [ "$name" != "$(version_at current)" ] && [ "$name" != "$(version_at previous)" ]; then rm -rf "$old"; fi
  done
  # Of the copies from before upgrades the newest two are kept.
  # shellcheck disable=SC2012 # names are ours: no odd letters
  ls -1t "$data/upgrades"/before-*.sqlite 2>/dev/null | tail -n +3 | while read -r file; do rm -f "$file"; done
}

told() {
  say "version $version is installed"
  if [ "$start" = yes ] && has_systemd; then
    say "open http://$(hostname):8080 in a browser; what goes on: journalctl -u boardcure"
  fi
  say "settings: /etc/boardcure/boardcure.toml; a look at everything: sudo boardcure doctor"
}

# --- commands --------------------------------------------------------------------------------------

put_in_place() {
  rm -rf "${opt:?}/versions/$version"
  mv -T "$staged" "$opt/versions/$version"
  # A power cut must not leave a link to files that never reached the card.
  sync -f "$opt"
  staged=
}

install_version() {
  need_root
  check_board
  find_node
  stage
  find_data "$staged"
  check_space
  old=$(version_at current)
  if [ -z "$old" ]; then
    make_user
    make_folders
    put_settings
    put_node
    put_in_place
    use "$version"
    start_service || fail 'it is installed, but did not get ready' \
      'journalctl -u boardcure tells why; when that is mended: systemctl start boardcure'
    told
  elif [ "$old" = "$version" ]; then
    # The same again: what may be missing around it is made whole.
    make_user
    make_folders
    put_settings
    put_node
    use "$version"
    start_service || fail 'it did not get ready' 'journalctl -u boardcure tells why'
    say "version $version is installed already"
  else
    upgrade_from "$old"
  fi
}

upgrade_from() {
  old=$1
  say "upgrading from $old to $version"
  stop_service
  copy_database || {
    start_service || true
    fail 'the database could not be copied, so nothing was changed' \
      'sudo boardcure doctor tells what is wrong; mend that first'
  }
  make_folders
  put_node
  put_in_place
  link_previous "$old"
  printf '%s\n' "$copy" >"$opt/before-upgrade"
  use "$version"
  if start_service; then
    prune
    told
    return 0
  fi
  say "version $version did not get ready: going back to $old"
  stop_service
  go_back "$old" "$copy"
  rm -f "$opt/previous" "$opt/before-upgrade"
  start_service || say "version $old does not start either: journalctl -u boardcure tells why"
  fail "the upgrade to $version was taken back" 'journalctl -u boardcure tells why it did not start'
}

rollback() {
  need_root
  find_node
  new=$(version_at current)
  find_data "$opt/current"
  old=$(version_at previous)
  [ -d "$opt/versions/${old:-none}" ] ||
    fail 'there is no version to go back to' 'install the artefact of the version that you want'
  saved=$(cat "$opt/before-upgrade" 2>/dev/null || true)
  say "going back from $new to $old"
  stop_service
  go_back "$old" "$saved"
  rm -f "$opt/previous" "$opt/before-upgrade"
  start_service || fail "version $old did not get ready" 'journalctl -u boardcure tells why'
  say "version $old is in use again"
}

uninstall() {
  need_root
  for unit in "$opt/current/deploy"/*.service; do
    name=$(basename "$unit")
    if has_systemd; then
      service disable --now --quiet "$name" || true
    elif [ -z "$root" ] && command -v systemctl >/dev/null; then
      systemctl disable "$name" 2>/dev/null || true
    fi
    rm -f "$units/$name"
  done
  rm -rf "$opt" "$wrapper"
  service daemon-reload
  if [ "$purge" = yes ]; then
    rm -rf "$data" "$etc"
    if [ -z "$root" ] && getent passwd "$user" >/dev/null; then userdel "$user"; fi
    say 'removed, with all readings and settings'
  else
    say "removed; readings stay in $data and settings in $etc (--purge removes them too)"
  fi
}

status() {
  current=$(version_at current)
  if [ -z "$current" ]; then
    say 'not installed'
    return 1
  fi
  say "version $current is installed; before it: $(version_at previous || true)"
  if has_systemd; then service --no-pager --lines=0 status boardcure.service; fi
}

# --- the words given -------------------------------------------------------------------------------

while [ $# -gt 0 ]; do
  case $1 in
    --node | --wait)
      [ $# -ge 2 ] || fail "$1 needs a value" 'install.sh --help lists the options'
      if [ "$1" = --node ]; then node_file=$2; else wait_s=$2; fi
      shift ;;
    --no-start) start=no ;;
    --purge) purge=yes ;;
    --help | -h) usage; exit 0 ;;
    -*) fail "there is no option $1" 'install.sh --help lists them' ;;
    *) if [ -z "$command" ]; then command=$1; elif [ -z "$artefact" ]; then artefact=$1; else
         fail "what is $1 for?" 'install.sh --help tells what it takes'; fi ;;
  esac
  shift
done
case $wait_s in *[!0-9]* | '') fail "--wait takes seconds, not $wait_s" 'for example --wait 900' ;; esac

case $command in
  install) install_version ;;
  upgrade)
    [ -n "$(version_at current)" ] || fail 'nothing is installed yet' "run: $0 install"
    install_version ;;
  rollback) rollback ;;
  uninstall) uninstall ;;
  status) status ;;
  '') usage; exit 2 ;;
  *) fail "there is no command $command" 'install.sh --help lists them' ;;
esac

#!/bin/sh
# Runs as root in a fresh Debian that was booted for it: what an operator does, one after the other.
# Ends the machine; the last line of /trial/log says whether all went well.
set -eu
exec >/trial/log 2>&1
trap '[ $? = 0 ] || journalctl -u boardcure --no-pager -n 60; systemctl --no-block poweroff' EXIT
cd /trial
export SYSTEMD_PAGER=

step() { echo "== $*"; }
is() { # is <what> <wanted> <got>
  [ "$2" = "$3" ] || { echo "WRONG: $1 is '$3', not '$2'"; journalctl -u boardcure --no-pager -n 30; exit 1; }
  echo "   $1: $3"
}
shown() { systemctl show boardcure -p "$1" --value; }
health() { curl -s --max-time 5 http://127.0.0.1:8080/healthz; }
# shellcheck disable=SC2016 # it is JavaScript that expands
send() { # send <sensor> <value>
  (cd /opt/boardcure/current && node --input-type=module -e '
    import { connectAsync } from "mqtt";
    const client = await connectAsync("mqtt://127.0.0.1:1883");
    await client.publishAsync(`boardcure/shed/sensor/${process.argv[1]}/air-temperature`, process.argv[2], { qos: 1 });
    await client.endAsync();' "$1" "$2")
}
sensors() { curl -s http://127.0.0.1:8080/api/v1/sensors | node -p 'JSON.parse(require("fs").readFileSync(0)).map((one) => one.id).sort().join()'; }
until_is() { # until_is <what> <wanted> <command…>
  what=$1 wanted=$2
  shift 2
  for _ in $(seq 120); do
    [ "$("$@" 2>/dev/null)" = "$wanted" ] && { echo "   $what: $wanted"; return 0; }
    sleep 0.5
  done
  is "$what" "$wanted" "$("$@")"
}
version() { basename "$(readlink /opt/boardcure/current)"; }

step 'install'
./install.sh install ./one.tar.gz
is 'service' active "$(systemctl is-active boardcure)"
is 'enabled' enabled "$(systemctl is-enabled boardcure)"
is 'status' 'Pages at port 8080, sensors at port 1883.' "$(shown StatusText)"
is 'user' boardcure "$(ps -o user= -p "$(shown MainPID)")"
is 'health' ok "$(health | node -p 'JSON.parse(require("fs").readFileSync(0)).status')"
is 'no new rights' 1 "$(awk '/^NoNewPrivs/ { print $2 }' "/proc/$(shown MainPID)/status")"
is 'filter of system calls' 2 "$(awk '/^Seccomp:/ { print $2 }' "/proc/$(shown MainPID)/status")"
is 'capabilities' 0000000000000000 "$(awk '/^CapBnd/ { print $2 }' "/proc/$(shown MainPID)/status")"
systemd-analyze security --no-pager --threshold=20 boardcure | tail -n 1

step 'take a reading'
send first 18.5
is 'sensors' first "$(sensors)"

step 'read the settings anew'
printf '\n[log]\nlevel = "warn"\n[mqtt]\nmaxConnections = 50\n' >>/etc/boardcure/boardcure.toml
systemctl reload boardcure
# shellcheck disable=SC2016
until_is 'waits for a start' '["mqtt.maxConnections"]' sh -c 'curl -s http://127.0.0.1:8080/healthz | node -p "JSON.stringify(JSON.parse(require(\"fs\").readFileSync(0)).restartFor)"'

step 'look at everything'
boardcure doctor || true

step 'a daemon that is stuck is started again by the watchdog'
mkdir -p /run/systemd/system/boardcure.service.d
printf '[Service]\nWatchdogSec=8s\nRestartSec=1\n' >/run/systemd/system/boardcure.service.d/trial.conf
systemctl daemon-reload
systemctl restart boardcure
sleep 20
is 'restarts while it answers' 0 "$(shown NRestarts)"
kill -STOP "$(shown MainPID)"
until_is 'restarts once it is stuck' 1 shown NRestarts
until_is 'service' active systemctl is-active boardcure
rm -r /run/systemd/system/boardcure.service.d
systemctl daemon-reload
systemctl restart boardcure

step 'upgrade'
./install.sh upgrade ./two.tar.gz
is 'version' "$(cat two.version)" "$(version)"
is 'service' active "$(systemctl is-active boardcure)"
is 'sensors' first "$(sensors)"
send second 19

step 'an upgrade that does not start is taken back'
if ./install.sh upgrade ./broken.tar.gz --wait 60; then echo 'WRONG: it was taken for good'; exit 1; fi
is 'version' "$(cat two.version)" "$(version)"
is 'service' active "$(systemctl is-active boardcure)"
is 'sensors' first,second "$(sensors)"

step 'install again over it, and stop in order'
./install.sh install ./two.tar.gz
systemctl stop boardcure
is 'end' success "$(shown Result)"

step 'remove'
./install.sh uninstall
is 'programs' no "$([ -e /opt/boardcure ] && echo yes || echo no)"
is 'readings' yes "$([ -e /var/lib/boardcure/boardcure.sqlite ] && echo yes || echo no)"
./install.sh install ./one.tar.gz
is 'sensors' first,second "$(sensors)"
./install.sh uninstall --purge
is 'readings' no "$([ -e /var/lib/boardcure ] && echo yes || echo no)"
is 'user' no "$(getent passwd boardcure >/dev/null && echo yes || echo no)"

echo 'TRIAL PASSED'

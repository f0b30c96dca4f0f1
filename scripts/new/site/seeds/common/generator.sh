#!/bin/sh
# Fetches the program that makes this site into the folder `generator` beside this file, and installs it.
# To take another version, name it here: a tag or a whole commit.
version=v0.0.0
address=

set -eu
cd "$(dirname "$0")"
if [ -z "$address" ]; then
  echo "generator.sh does not say where the generator lives. Write its repository behind address= and run this again." >&2
  exit 1
fi
if [ ! -e generator ]; then git clone --quiet --no-checkout -- "$address" generator; fi
git -C generator remote set-url origin "$address"
git -C generator fetch --quiet --tags origin
git -C generator checkout --quiet --detach "$version"
cd generator
npm ci

#!/bin/sh
# Run once by the database's image when its data are made: the owner of the tables, who is no superuser; the role that the
# app works in, which cannot sign in; and one that reads everything for backups and writes nothing.
set -eu
psql --username postgres --set=ON_ERROR_STOP=1 --set=owner="$OWNER_PASSWORD" --set=backup="$BACKUP_PASSWORD" <<'SQL'
CREATE ROLE gyle_app NOLOGIN NOINHERIT;
CREATE ROLE gylebook LOGIN PASSWORD :'owner';
GRANT gyle_app TO gylebook;
CREATE ROLE gylebook_backup LOGIN BYPASSRLS PASSWORD :'backup';
GRANT pg_read_all_data TO gylebook_backup;
CREATE DATABASE gylebook OWNER gylebook;
SQL

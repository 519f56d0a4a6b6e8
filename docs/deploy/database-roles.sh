#!/bin/sh
# Run once by the database's image when its data are made: the owner of the tables, who is no superuser; the role that the
# app works in, which cannot sign in; and one that reads everything for backups and writes nothing.
set -eu
psql --username postgres --set=ON_ERROR_STOP=1 --set=owner="$OWNER_PASSWORD" --set=backup="$BACKUP_PASSWORD" --set=web="$WEB_PASSWORD" <<'SQL'
CREATE ROLE gyle_app NOLOGIN NOINHERIT;
-- CREATEROLE, for the roles that its functions belong to, which the migrations make.
CREATE ROLE gylebook LOGIN CREATEROLE PASSWORD :'owner';
GRANT gyle_app TO gylebook;
CREATE ROLE gylebook_backup LOGIN BYPASSRLS PASSWORD :'backup';
GRANT pg_read_all_data TO gylebook_backup;
-- For a connection pooler, which passes on no settings: what the app would ask for, the account has.
CREATE ROLE gylebook_web LOGIN NOINHERIT PASSWORD :'web';
GRANT gyle_app TO gylebook_web;
ALTER ROLE gylebook_web SET role = 'gyle_app';
ALTER ROLE gylebook_web SET statement_timeout = '5s';
ALTER ROLE gylebook_web SET lock_timeout = '3s';
ALTER ROLE gylebook_web SET idle_in_transaction_session_timeout = '10s';
CREATE DATABASE gylebook OWNER gylebook;
SQL

-- Whether a migration is in: a server asks it before it says that it is ready. The record itself stays its owner's.
CREATE FUNCTION is_migrated(name text) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public
  AS $$ SELECT EXISTS (
    SELECT FROM _prisma_migrations
    WHERE migration_name = name AND finished_at IS NOT NULL AND rolled_back_at IS NULL) $$;
REVOKE ALL ON FUNCTION is_migrated(text) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION is_migrated(text) TO gyle_app;

import { ROLES } from "@/lib/model/roles";
import { ROLE_DUTIES, ROLE_NAMES } from "@/lib/ui/role-names";

/** What each role does. */
export function RoleList() {
  return (
    <section aria-labelledby="roles">
      <h2 id="roles" className="mb-3">
        What the roles mean
      </h2>
      <dl className="grid grid-cols-[auto_1fr] gap-x-6 gap-y-1">
        {ROLES.map((role) => (
          <div key={role} className="contents">
            <dt>{ROLE_NAMES[role]}</dt>
            <dd className="text-muted">{ROLE_DUTIES[role]}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

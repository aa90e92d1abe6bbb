using Microsoft.EntityFrameworkCore.Migrations;

namespace Practice.Store.RowSecurity;

/// <summary>
/// What a migration says of a new table: whose rows may be seen and what the application may do. Policies are forced,
/// so they hold for the owner as well. Migrations already applied rely on these texts: add, never alter.
/// </summary>
internal static class Protection
{
    public const string AllRights = "select, insert, update, delete";

    /// <summary>The practice the connection works for; null, which equals nothing, when it was told none.</summary>
    public static void CreateCurrentPractice(this MigrationBuilder migration) =>
        migration.Sql(
            """
            create function current_practice() returns uuid language sql stable parallel safe
                return nullif(current_setting('practice.id', true), '')::uuid;
            """
        );

    /// <summary>A table whose rows each belong to one practice.</summary>
    public static void ProtectByPractice(
        this MigrationBuilder migration,
        string table,
        string rights = AllRights
    )
    {
        migration.Sql(
            $"""
            create policy own_practice on {table}
                using (practice_id = current_practice()) with check (practice_id = current_practice());
            """
        );
        migration.Protect(table, rights);
    }

    /// <summary>Accounts: those of the practice, and the one that somebody at the door can name.</summary>
    public static void ProtectAccounts(this MigrationBuilder migration)
    {
        migration.ProtectByPractice("account");
        migration.Sql(
            """
            create policy at_the_door on account for select using (
                current_setting('practice.door', true) in (id::text, normalized_user_name, normalized_email)
            );
            create policy at_the_door on account_passkey for select using (
                current_setting('practice.door', true) = encode(credential_id, 'hex')
            );
            """
        );
        foreach (
            var table in new[]
            {
                "account_claim",
                "account_login",
                "account_token",
                "account_passkey",
            }
        )
        {
            migration.Sql(
                $"""
                create policy with_account on {table} using (exists (select from account where id = user_id))
                    with check (exists (select from account where id = user_id and practice_id = current_practice()));
                """
            );
            migration.Protect(table, AllRights);
        }
    }

    /// <summary>Invitations: those of the practice, and the one whose secret somebody at the door brings.</summary>
    public static void ProtectInvitations(this MigrationBuilder migration)
    {
        migration.ProtectByPractice("invitation", "select, insert, update");
        migration.Sql(
            """
            create policy at_the_door on invitation for select using (
                current_setting('practice.door', true) = secret_hash
            );
            """
        );
    }

    /// <summary>Phone links: those of the practice, and the one whose fingerprint somebody at the door can name.</summary>
    public static void ProtectPhoneLinks(this MigrationBuilder migration)
    {
        migration.ProtectByPractice("phone_link");
        migration.Sql(
            "create policy at_the_door on phone_link for select using (current_setting('practice.door', true) = fingerprint);"
        );
    }

    /// <summary>An issued plan stays as it was handed over, whatever a program tries.</summary>
    public static void FreezeIssuedPlans(this MigrationBuilder migration) =>
        migration.Sql(
            """
            create function refuse_change_of_issued_plan() returns trigger language plpgsql as $$
            begin
                raise exception 'An issued plan never changes.' using errcode = 'check_violation';
            end $$;
            create trigger issued_plan_never_changes before update on plan_version for each row
                when (
                    old.status <> 'Draft'
                    and (new.status = 'Draft'
                        or (new.plan, new.number, new.race_id, new.issued_by, new.issued_at)
                            is distinct from (old.plan, old.number, old.race_id, old.issued_by, old.issued_at))
                )
                execute function refuse_change_of_issued_plan();
            """
        );

    /// <summary>The same now that plans are sealed.</summary>
    public static void FreezeSealedPlans(this MigrationBuilder migration) =>
        migration.Sql(
            """
            create trigger issued_plan_never_changes before update on plan_version for each row
                when (
                    old.status <> 'Draft'
                    and (new.status = 'Draft'
                        or (new.sealed_plan, new.number, new.race_id, new.issued_by, new.issued_at)
                            is distinct from (old.sealed_plan, old.number, old.race_id, old.issued_by, old.issued_at))
                )
                execute function refuse_change_of_issued_plan();
            """
        );

    /// <summary>A table that belongs to no practice.</summary>
    public static void Grant(this MigrationBuilder migration, string table, string rights) =>
        migration.Sql($"grant {rights} on {table} to {Roles.Application};");

    private static void Protect(this MigrationBuilder migration, string table, string rights)
    {
        migration.Sql($"alter table {table} enable row level security, force row level security;");
        migration.Grant(table, rights);
    }
}

using Microsoft.EntityFrameworkCore.Migrations;

namespace Practice.Store.News;

/// <summary>
/// Lets every line of audit announce itself. It is written in the transaction of the change it tells of, so whoever
/// listens hears of a change once it is there to be read, and never of one that was rolled back. Migrations already
/// applied rely on this text: add, never alter.
/// </summary>
internal static class NewsTrigger
{
    public const string Channel = "practice_news";

    public static void AnnounceAudit(this MigrationBuilder migration) =>
        migration.Sql(
            $"""
            create function announce_audit_entry() returns trigger language plpgsql as $$
            begin
                perform pg_notify(
                    '{Channel}',
                    json_build_object('practiceId', new.practice_id, 'what', new.what, 'about', new.about)::text
                );
                return null;
            end $$;
            create trigger audit_entry_is_news after insert on audit_entry
                for each row execute function announce_audit_entry();
            """
        );

    /// <summary>That somebody read a record is audit and no news: nothing changed.</summary>
    public static void KeepReadingQuiet(this MigrationBuilder migration) =>
        migration.Sql(
            """
            drop trigger audit_entry_is_news on audit_entry;
            create trigger audit_entry_is_news after insert on audit_entry
                for each row when (new.what <> 'record-read') execute function announce_audit_entry();
            """
        );

    public static void SilenceAudit(this MigrationBuilder migration) =>
        migration.Sql(
            """
            drop trigger audit_entry_is_news on audit_entry;
            drop function announce_audit_entry();
            """
        );
}

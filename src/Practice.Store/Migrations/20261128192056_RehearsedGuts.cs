using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class RehearsedGuts : Migration
    {
        /// <summary>
        /// What the gut takes is read from rehearsals now. What was typed before stays as her own value, without which a course could
        /// ask for more than she meant.
        /// </summary>
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.Sql(
                """
                alter table race_course no force row level security;
                update race_course set sheet = jsonb_set(
                    sheet #- '{choices,gut}' #- '{choices,toleratedGPerHour}' #- '{choices,carbohydrateGPerHour}',
                    '{choices,overrides}',
                    (select coalesce(jsonb_agg(jsonb_build_object(
                            'key', key, 'value', value, 'by', 'the practice', 'reason', 'Typed before reasons were asked for.',
                            'at', to_char(now() at time zone 'utc', 'YYYY-MM-DD"T"HH24:MI:SS"Z"'))), '[]')
                        from (values
                            ('course-tolerated', (sheet #>> '{choices,toleratedGPerHour}')::numeric),
                            ('course-carbohydrate', (sheet #>> '{choices,carbohydrateGPerHour}')::numeric),
                            ('course-clean-trials', case sheet #>> '{choices,gut}' when 'Rehearsed' then 1 when 'WellTrained' then 3 end)
                        ) as typed(key, value) where value is not null));
                alter table race_course force row level security;
                """);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
        }
    }
}

using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Practice.Store.RowSecurity;
using Practice.Store.Sealing;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class SealedHealth : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.Sql(
                """
                drop trigger issued_plan_never_changes on plan_version;
                alter table rehearsal drop column warns;
                alter table rehearsal alter column kind drop expression;
                alter table rehearsal alter column kind type character varying(20), alter column kind set not null;
                """
            );
            migrationBuilder.TurnIntoBytes("screening", "answers", "clearances");
            migrationBuilder.TurnIntoBytes(
                "client",
                "physique",
                "diet",
                "tastes",
                "notes",
                "body_mass_log",
                "sweat_log"
            );
            migrationBuilder.TurnIntoBytes("health_change", "field", "was", "became");
            migrationBuilder.TurnIntoBytes("plan_version", "plan");
            migrationBuilder.TurnIntoBytes(
                "rehearsal",
                "details",
                "plan",
                "feedback",
                "decision",
                "cancelled_because"
            );
            migrationBuilder.TurnIntoBytes("rehearsal_background", "blocked", "gut");
            migrationBuilder.TurnIntoBytes("race_debrief", "report");
            migrationBuilder.TurnIntoBytes("race_course", "sheet");
            migrationBuilder.FreezeSealedPlans();
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder) =>
            throw new NotSupportedException("What is sealed is not laid open again by a migration.");
    }
}

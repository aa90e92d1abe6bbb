using System;
using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;
using Practice.Store.News;
using Practice.Store.RowSecurity;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class Rehearsals : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "rehearsal",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    client_id = table.Column<Guid>(type: "uuid", nullable: false),
                    race_id = table.Column<Guid>(type: "uuid", nullable: false),
                    details = table.Column<string>(type: "jsonb", nullable: false),
                    run_on = table.Column<LocalDate>(type: "date", nullable: false),
                    status = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    feedback = table.Column<string>(type: "jsonb", nullable: true),
                    decision = table.Column<string>(type: "jsonb", nullable: true),
                    cancelled_because = table.Column<string>(type: "text", nullable: false),
                    kind = table.Column<string>(type: "text", nullable: false, computedColumnSql: "details ->> 'kind'", stored: true),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false),
                    warns = table.Column<bool>(type: "boolean", nullable: false, computedColumnSql: "coalesce(jsonb_array_length(feedback -> 'warningSigns') > 0, false)", stored: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_rehearsal", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_rehearsal_client_practice_id_client_id",
                        columns: x => new { x.practice_id, x.client_id },
                        principalTable: "client",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_rehearsal_race_practice_id_race_id",
                        columns: x => new { x.practice_id, x.race_id },
                        principalTable: "race",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "rehearsal_background",
                columns: table => new
                {
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    client_id = table.Column<Guid>(type: "uuid", nullable: false),
                    long_runs = table.Column<string>(type: "jsonb", nullable: false),
                    blocked = table.Column<string>(type: "jsonb", nullable: false),
                    gut = table.Column<string>(type: "jsonb", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_rehearsal_background", x => new { x.practice_id, x.client_id });
                    table.ForeignKey(
                        name: "fk_rehearsal_background_client_practice_id_client_id",
                        columns: x => new { x.practice_id, x.client_id },
                        principalTable: "client",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_rehearsal_practice_id_client_id",
                table: "rehearsal",
                columns: new[] { "practice_id", "client_id" });

            migrationBuilder.CreateIndex(
                name: "ix_rehearsal_practice_id_race_id",
                table: "rehearsal",
                columns: new[] { "practice_id", "race_id" });

            migrationBuilder.ProtectByPractice("rehearsal");
            migrationBuilder.ProtectByPractice("rehearsal_background");
            migrationBuilder.AnnounceAudit();
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.SilenceAudit();
            migrationBuilder.DropTable(
                name: "rehearsal");

            migrationBuilder.DropTable(
                name: "rehearsal_background");
        }
    }
}

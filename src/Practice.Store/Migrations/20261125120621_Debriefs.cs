using System;
using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;
using Practice.Store.RowSecurity;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class Debriefs : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "race_debrief",
                columns: table => new
                {
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    race_id = table.Column<Guid>(type: "uuid", nullable: false),
                    client_id = table.Column<Guid>(type: "uuid", nullable: false),
                    report = table.Column<string>(type: "jsonb", nullable: false),
                    recorded_by = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    recorded_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_race_debrief", x => new { x.practice_id, x.race_id });
                    table.ForeignKey(
                        name: "fk_race_debrief_race_practice_id_race_id",
                        columns: x => new { x.practice_id, x.race_id },
                        principalTable: "race",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_race_debrief_practice_id_client_id",
                table: "race_debrief",
                columns: new[] { "practice_id", "client_id" });

            migrationBuilder.ProtectByPractice("race_debrief");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "race_debrief");
        }
    }
}

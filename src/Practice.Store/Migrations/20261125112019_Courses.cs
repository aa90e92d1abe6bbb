using System;
using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;
using Practice.Store.RowSecurity;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class Courses : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "race_course",
                columns: table => new
                {
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    race_id = table.Column<Guid>(type: "uuid", nullable: false),
                    sheet = table.Column<string>(type: "jsonb", nullable: false),
                    edited_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_race_course", x => new { x.practice_id, x.race_id });
                    table.ForeignKey(
                        name: "fk_race_course_race_practice_id_race_id",
                        columns: x => new { x.practice_id, x.race_id },
                        principalTable: "race",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });
            migrationBuilder.ProtectByPractice("race_course");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "race_course");
        }
    }
}

using System;
using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;
using Practice.Store.RowSecurity;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class OwnFoods : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "own_food",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    sheet = table.Column<string>(type: "jsonb", nullable: false),
                    name_key = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    retired_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_own_food", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_own_food_practice_practice_id",
                        column: x => x.practice_id,
                        principalTable: "practice",
                        principalColumn: "practice_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "own_measure",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    food_id = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    name = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    plural = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    grams = table.Column<decimal>(type: "numeric", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_own_measure", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_own_measure_practice_practice_id",
                        column: x => x.practice_id,
                        principalTable: "practice",
                        principalColumn: "practice_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_own_food_practice_id_name_key",
                table: "own_food",
                columns: new[] { "practice_id", "name_key" },
                unique: true,
                filter: "retired_at is null");

            migrationBuilder.CreateIndex(
                name: "ix_own_measure_practice_id_food_id_name",
                table: "own_measure",
                columns: new[] { "practice_id", "food_id", "name" },
                unique: true);

            // a food that plans and trials name is retired, never deleted
            migrationBuilder.ProtectByPractice("own_food", "select, insert, update");
            migrationBuilder.ProtectByPractice("own_measure");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "own_food");

            migrationBuilder.DropTable(
                name: "own_measure");
        }
    }
}

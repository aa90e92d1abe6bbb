using System;
using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class RehearsalLetters : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<Guid>(
                name: "rehearsal_id",
                table: "letter",
                type: "uuid",
                nullable: true);

            migrationBuilder.AddColumn<LocalDate>(
                name: "run_on",
                table: "letter",
                type: "date",
                nullable: true);

            migrationBuilder.CreateIndex(
                name: "ix_letter_practice_id_rehearsal_id_run_on_kind",
                table: "letter",
                columns: new[] { "practice_id", "rehearsal_id", "run_on", "kind" },
                unique: true,
                filter: "given_up_at is null");

            migrationBuilder.AddForeignKey(
                name: "fk_letter_rehearsal_practice_id_rehearsal_id",
                table: "letter",
                columns: new[] { "practice_id", "rehearsal_id" },
                principalTable: "rehearsal",
                principalColumns: new[] { "practice_id", "id" },
                onDelete: ReferentialAction.Cascade);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "fk_letter_rehearsal_practice_id_rehearsal_id",
                table: "letter");

            migrationBuilder.DropIndex(
                name: "ix_letter_practice_id_rehearsal_id_run_on_kind",
                table: "letter");

            migrationBuilder.DropColumn(
                name: "rehearsal_id",
                table: "letter");

            migrationBuilder.DropColumn(
                name: "run_on",
                table: "letter");
        }
    }
}

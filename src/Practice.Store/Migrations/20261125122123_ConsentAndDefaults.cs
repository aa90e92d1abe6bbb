using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class ConsentAndDefaults : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "defaults",
                table: "practice",
                type: "jsonb",
                nullable: false,
                defaultValue: "{}");

            migrationBuilder.AddColumn<string>(
                name: "consents",
                table: "client",
                type: "jsonb",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "legal_hold",
                table: "client",
                type: "jsonb",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "defaults",
                table: "practice");

            migrationBuilder.DropColumn(
                name: "consents",
                table: "client");

            migrationBuilder.DropColumn(
                name: "legal_hold",
                table: "client");
        }
    }
}

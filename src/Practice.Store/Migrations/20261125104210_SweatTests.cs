using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class SweatTests : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "sweat_log",
                table: "client",
                type: "jsonb",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "zone_id",
                table: "client",
                type: "character varying(64)",
                maxLength: 64,
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "sweat_log",
                table: "client");

            migrationBuilder.DropColumn(
                name: "zone_id",
                table: "client");
        }
    }
}

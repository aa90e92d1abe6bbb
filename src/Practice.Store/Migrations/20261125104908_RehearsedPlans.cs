using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class RehearsedPlans : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "plan",
                table: "rehearsal",
                type: "jsonb",
                nullable: false,
                defaultValue: "{}");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "plan",
                table: "rehearsal");
        }
    }
}

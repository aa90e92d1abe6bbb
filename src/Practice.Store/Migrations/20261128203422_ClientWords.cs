using Microsoft.EntityFrameworkCore.Migrations;
using Practice.Store.Clients;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class ClientWords : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.Sql(PlainWords.Make);
            migrationBuilder.AddColumn<string>(
                name: "words",
                table: "client",
                type: "text",
                nullable: true,
                computedColumnSql: "plain_words(given_name || ' ' || family_name || ' ' || coalesce(email, ''))",
                stored: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "words",
                table: "client");
            migrationBuilder.Sql("drop function plain_words(text)");
        }
    }
}

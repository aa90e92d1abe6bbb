using System;
using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;
using Practice.Store.RowSecurity;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class PhoneLinks : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "phone_link",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    client_id = table.Column<Guid>(type: "uuid", nullable: false),
                    race_id = table.Column<Guid>(type: "uuid", nullable: false),
                    fingerprint = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    given_by = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    given_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    expires_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    revoked_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true),
                    first_used_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true),
                    last_used_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true),
                    uses = table.Column<int>(type: "integer", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_phone_link", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_phone_link_client_practice_id_client_id",
                        columns: x => new { x.practice_id, x.client_id },
                        principalTable: "client",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_phone_link_race_practice_id_race_id",
                        columns: x => new { x.practice_id, x.race_id },
                        principalTable: "race",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "received_feedback",
                columns: table => new
                {
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    rehearsal_id = table.Column<Guid>(type: "uuid", nullable: false),
                    key = table.Column<Guid>(type: "uuid", nullable: false),
                    at = table.Column<Instant>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_received_feedback", x => new { x.practice_id, x.rehearsal_id, x.key });
                    table.ForeignKey(
                        name: "fk_received_feedback_rehearsal_practice_id_rehearsal_id",
                        columns: x => new { x.practice_id, x.rehearsal_id },
                        principalTable: "rehearsal",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_phone_link_fingerprint",
                table: "phone_link",
                column: "fingerprint");

            migrationBuilder.CreateIndex(
                name: "ix_phone_link_practice_id_client_id",
                table: "phone_link",
                columns: new[] { "practice_id", "client_id" });

            migrationBuilder.CreateIndex(
                name: "ix_phone_link_practice_id_race_id",
                table: "phone_link",
                columns: new[] { "practice_id", "race_id" });

            migrationBuilder.ProtectPhoneLinks();
            migrationBuilder.ProtectByPractice("received_feedback", "select, insert");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "phone_link");

            migrationBuilder.DropTable(
                name: "received_feedback");
        }
    }
}

using System;
using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;
using Practice.Store.News;
using Practice.Store.RowSecurity;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class People : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<Guid>(
                name: "responsible_id",
                table: "client",
                type: "uuid",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "from",
                table: "audit_entry",
                type: "character varying(200)",
                maxLength: 200,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<Instant>(
                name: "deactivated_at",
                table: "account",
                type: "timestamp with time zone",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "account_session",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    account_id = table.Column<Guid>(type: "uuid", nullable: false),
                    from = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    begun_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    seen_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    ended_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_account_session", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_account_session_account_account_id",
                        column: x => x.account_id,
                        principalTable: "account",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "health_change",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    entry_id = table.Column<Guid>(type: "uuid", nullable: false),
                    client_id = table.Column<Guid>(type: "uuid", nullable: false),
                    field = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    was = table.Column<string>(type: "text", nullable: false),
                    became = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_health_change", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_health_change_audit_entry_practice_id_entry_id",
                        columns: x => new { x.practice_id, x.entry_id },
                        principalTable: "audit_entry",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_health_change_client_practice_id_client_id",
                        columns: x => new { x.practice_id, x.client_id },
                        principalTable: "client",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "invitation",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    email = table.Column<string>(type: "character varying(320)", maxLength: 320, nullable: false),
                    role = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    secret_hash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    invited_by = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    invited_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    expires_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    closed_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true),
                    is_accepted = table.Column<bool>(type: "boolean", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_invitation", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_invitation_practice_practice_id",
                        column: x => x.practice_id,
                        principalTable: "practice",
                        principalColumn: "practice_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "letter",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    client_id = table.Column<Guid>(type: "uuid", nullable: true),
                    kind = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    to = table.Column<string>(type: "character varying(320)", maxLength: 320, nullable: false),
                    subject = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    @sealed = table.Column<byte[]>(name: "sealed", type: "bytea", nullable: false),
                    written_by = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    written_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    sent_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true),
                    given_up_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true),
                    failed_tries = table.Column<int>(type: "integer", nullable: false),
                    problem = table.Column<string>(type: "character varying(500)", maxLength: 500, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_letter", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_letter_client_practice_id_client_id",
                        columns: x => new { x.practice_id, x.client_id },
                        principalTable: "client",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "fk_letter_practice_practice_id",
                        column: x => x.practice_id,
                        principalTable: "practice",
                        principalColumn: "practice_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "letter_due",
                columns: table => new
                {
                    letter_id = table.Column<Guid>(type: "uuid", nullable: false),
                    writer = table.Column<Guid>(type: "uuid", nullable: false),
                    due_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_letter_due", x => x.letter_id);
                });

            migrationBuilder.CreateTable(
                name: "mail_server",
                columns: table => new
                {
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    host = table.Column<string>(type: "character varying(255)", maxLength: 255, nullable: false),
                    port = table.Column<int>(type: "integer", nullable: false),
                    security = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    user = table.Column<string>(type: "character varying(320)", maxLength: 320, nullable: false),
                    sealed_password = table.Column<byte[]>(type: "bytea", nullable: false),
                    from = table.Column<string>(type: "character varying(320)", maxLength: 320, nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_mail_server", x => x.practice_id);
                    table.ForeignKey(
                        name: "fk_mail_server_practice_practice_id",
                        column: x => x.practice_id,
                        principalTable: "practice",
                        principalColumn: "practice_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_client_practice_id_responsible_id",
                table: "client",
                columns: new[] { "practice_id", "responsible_id" });

            migrationBuilder.CreateIndex(
                name: "ix_account_session_account_id",
                table: "account_session",
                column: "account_id");

            migrationBuilder.CreateIndex(
                name: "ix_account_session_practice_id_account_id",
                table: "account_session",
                columns: new[] { "practice_id", "account_id" });

            migrationBuilder.CreateIndex(
                name: "ix_health_change_practice_id_client_id",
                table: "health_change",
                columns: new[] { "practice_id", "client_id" });

            migrationBuilder.CreateIndex(
                name: "ix_health_change_practice_id_entry_id",
                table: "health_change",
                columns: new[] { "practice_id", "entry_id" });

            migrationBuilder.CreateIndex(
                name: "ix_invitation_secret_hash",
                table: "invitation",
                column: "secret_hash");

            migrationBuilder.CreateIndex(
                name: "ix_letter_practice_id_client_id",
                table: "letter",
                columns: new[] { "practice_id", "client_id" });

            migrationBuilder.CreateIndex(
                name: "ix_letter_due_due_at",
                table: "letter_due",
                column: "due_at");

            migrationBuilder.ProtectByPractice("health_change", "select, insert");
            migrationBuilder.ProtectByPractice("account_session", "select, insert, update");
            migrationBuilder.ProtectByPractice("mail_server");
            migrationBuilder.ProtectByPractice("letter", "select, insert, update");
            migrationBuilder.Grant("letter_due", "select, insert, update, delete");
            migrationBuilder.ProtectInvitations();
            migrationBuilder.KeepReadingQuiet();
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "account_session");

            migrationBuilder.DropTable(
                name: "health_change");

            migrationBuilder.DropTable(
                name: "invitation");

            migrationBuilder.DropTable(
                name: "letter");

            migrationBuilder.DropTable(
                name: "letter_due");

            migrationBuilder.DropTable(
                name: "mail_server");

            migrationBuilder.DropIndex(
                name: "ix_client_practice_id_responsible_id",
                table: "client");

            migrationBuilder.DropColumn(
                name: "responsible_id",
                table: "client");

            migrationBuilder.DropColumn(
                name: "from",
                table: "audit_entry");

            migrationBuilder.DropColumn(
                name: "deactivated_at",
                table: "account");
        }
    }
}

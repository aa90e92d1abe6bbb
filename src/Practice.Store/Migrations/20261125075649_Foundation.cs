using System;
using Microsoft.EntityFrameworkCore.Migrations;
using NodaTime;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;
using Practice.Store.RowSecurity;

#nullable disable

namespace Practice.Store.Migrations
{
    /// <inheritdoc />
    public partial class Foundation : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "data_protection_key",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    friendly_name = table.Column<string>(type: "text", nullable: true),
                    xml = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_data_protection_key", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "practice",
                columns: table => new
                {
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    accent = table.Column<string>(type: "character varying(7)", maxLength: 7, nullable: false),
                    logo_png = table.Column<byte[]>(type: "bytea", nullable: false),
                    footer = table.Column<string>(type: "text", nullable: false),
                    registration_line = table.Column<string>(type: "text", nullable: false),
                    paper = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    units = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_practice", x => x.practice_id);
                });

            migrationBuilder.CreateTable(
                name: "account",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    display_name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    role = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    user_name = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    normalized_user_name = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    email = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    normalized_email = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    email_confirmed = table.Column<bool>(type: "boolean", nullable: false),
                    password_hash = table.Column<string>(type: "text", nullable: true),
                    security_stamp = table.Column<string>(type: "text", nullable: true),
                    concurrency_stamp = table.Column<string>(type: "text", nullable: true),
                    phone_number = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    phone_number_confirmed = table.Column<bool>(type: "boolean", nullable: false),
                    two_factor_enabled = table.Column<bool>(type: "boolean", nullable: false),
                    lockout_end = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    lockout_enabled = table.Column<bool>(type: "boolean", nullable: false),
                    access_failed_count = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_account", x => x.id);
                    table.ForeignKey(
                        name: "fk_account_practice_practice_id",
                        column: x => x.practice_id,
                        principalTable: "practice",
                        principalColumn: "practice_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "audit_entry",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    account_id = table.Column<Guid>(type: "uuid", nullable: true),
                    by = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    what = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    about = table.Column<Guid>(type: "uuid", nullable: true),
                    detail = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_audit_entry", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_audit_entry_practice_practice_id",
                        column: x => x.practice_id,
                        principalTable: "practice",
                        principalColumn: "practice_id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "client",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    given_name = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    family_name = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    email = table.Column<string>(type: "character varying(320)", maxLength: 320, nullable: true),
                    birth_date = table.Column<LocalDate>(type: "date", nullable: false),
                    physique = table.Column<string>(type: "jsonb", nullable: false),
                    diet = table.Column<string>(type: "jsonb", nullable: false),
                    tastes = table.Column<string>(type: "jsonb", nullable: false),
                    units = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    notes = table.Column<string>(type: "text", nullable: false),
                    body_mass_log = table.Column<string>(type: "jsonb", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_client", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_client_practice_practice_id",
                        column: x => x.practice_id,
                        principalTable: "practice",
                        principalColumn: "practice_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "registered_practice",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_registered_practice", x => x.id);
                    table.ForeignKey(
                        name: "fk_registered_practice_practice_id",
                        column: x => x.id,
                        principalTable: "practice",
                        principalColumn: "practice_id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "account_claim",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    user_id = table.Column<Guid>(type: "uuid", nullable: false),
                    claim_type = table.Column<string>(type: "text", nullable: true),
                    claim_value = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_account_claim", x => x.id);
                    table.ForeignKey(
                        name: "fk_account_claim_account_user_id",
                        column: x => x.user_id,
                        principalTable: "account",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "account_login",
                columns: table => new
                {
                    login_provider = table.Column<string>(type: "character varying(128)", maxLength: 128, nullable: false),
                    provider_key = table.Column<string>(type: "character varying(128)", maxLength: 128, nullable: false),
                    provider_display_name = table.Column<string>(type: "text", nullable: true),
                    user_id = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_account_login", x => new { x.login_provider, x.provider_key });
                    table.ForeignKey(
                        name: "fk_account_login_account_user_id",
                        column: x => x.user_id,
                        principalTable: "account",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "account_passkey",
                columns: table => new
                {
                    credential_id = table.Column<byte[]>(type: "bytea", maxLength: 1024, nullable: false),
                    user_id = table.Column<Guid>(type: "uuid", nullable: false),
                    data = table.Column<string>(type: "jsonb", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_account_passkey", x => x.credential_id);
                    table.ForeignKey(
                        name: "fk_account_passkey_account_user_id",
                        column: x => x.user_id,
                        principalTable: "account",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "account_token",
                columns: table => new
                {
                    user_id = table.Column<Guid>(type: "uuid", nullable: false),
                    login_provider = table.Column<string>(type: "character varying(128)", maxLength: 128, nullable: false),
                    name = table.Column<string>(type: "character varying(128)", maxLength: 128, nullable: false),
                    value = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_account_token", x => new { x.user_id, x.login_provider, x.name });
                    table.ForeignKey(
                        name: "fk_account_token_account_user_id",
                        column: x => x.user_id,
                        principalTable: "account",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "race",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    client_id = table.Column<Guid>(type: "uuid", nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    place = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    discipline = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    distance_km = table.Column<decimal>(type: "numeric(7,3)", precision: 7, scale: 3, nullable: false),
                    start = table.Column<LocalDateTime>(type: "timestamp without time zone", nullable: false),
                    zone_id = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    goal_time = table.Column<Duration>(type: "interval", nullable: true),
                    weather = table.Column<string>(type: "jsonb", nullable: true),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_race", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_race_client_practice_id_client_id",
                        columns: x => new { x.practice_id, x.client_id },
                        principalTable: "client",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "screening",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    client_id = table.Column<Guid>(type: "uuid", nullable: false),
                    taken_on = table.Column<LocalDate>(type: "date", nullable: false),
                    answers = table.Column<string>(type: "jsonb", nullable: false),
                    clearances = table.Column<string>(type: "jsonb", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_screening", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_screening_client_practice_id_client_id",
                        columns: x => new { x.practice_id, x.client_id },
                        principalTable: "client",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "plan_version",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    practice_id = table.Column<Guid>(type: "uuid", nullable: false),
                    race_id = table.Column<Guid>(type: "uuid", nullable: false),
                    number = table.Column<int>(type: "integer", nullable: false),
                    status = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    plan = table.Column<string>(type: "jsonb", nullable: false),
                    created_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    edited_at = table.Column<Instant>(type: "timestamp with time zone", nullable: false),
                    issued_by = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    issued_at = table.Column<Instant>(type: "timestamp with time zone", nullable: true),
                    reason = table.Column<string>(type: "text", nullable: false),
                    xmin = table.Column<uint>(type: "xid", rowVersion: true, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_plan_version", x => new { x.practice_id, x.id });
                    table.ForeignKey(
                        name: "fk_plan_version_race_practice_id_race_id",
                        columns: x => new { x.practice_id, x.race_id },
                        principalTable: "race",
                        principalColumns: new[] { "practice_id", "id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_account_email",
                table: "account",
                column: "normalized_email");

            migrationBuilder.CreateIndex(
                name: "ix_account_practice_id",
                table: "account",
                column: "practice_id");

            migrationBuilder.CreateIndex(
                name: "ix_account_user_name",
                table: "account",
                column: "normalized_user_name",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_account_claim_user_id",
                table: "account_claim",
                column: "user_id");

            migrationBuilder.CreateIndex(
                name: "ix_account_login_user_id",
                table: "account_login",
                column: "user_id");

            migrationBuilder.CreateIndex(
                name: "ix_account_passkey_user_id",
                table: "account_passkey",
                column: "user_id");

            migrationBuilder.CreateIndex(
                name: "ix_audit_entry_practice_id_about",
                table: "audit_entry",
                columns: new[] { "practice_id", "about" });

            migrationBuilder.CreateIndex(
                name: "ix_plan_version_practice_id_race_id_number",
                table: "plan_version",
                columns: new[] { "practice_id", "race_id", "number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_race_practice_id_client_id",
                table: "race",
                columns: new[] { "practice_id", "client_id" });

            migrationBuilder.CreateIndex(
                name: "ix_race_practice_id_start",
                table: "race",
                columns: new[] { "practice_id", "start" });

            migrationBuilder.CreateIndex(
                name: "ix_screening_practice_id_client_id",
                table: "screening",
                columns: new[] { "practice_id", "client_id" },
                unique: true);

            migrationBuilder.CreateCurrentPractice();
            migrationBuilder.ProtectByPractice("practice", "select, insert, update");
            migrationBuilder.ProtectByPractice("client");
            migrationBuilder.ProtectByPractice("screening");
            migrationBuilder.ProtectByPractice("race");
            migrationBuilder.ProtectByPractice("plan_version");
            migrationBuilder.ProtectByPractice("audit_entry", "select, insert");
            migrationBuilder.ProtectAccounts();
            migrationBuilder.Grant("registered_practice", "select, insert");
            migrationBuilder.Grant("data_protection_key", "select, insert");
            migrationBuilder.FreezeIssuedPlans();
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "account_claim");

            migrationBuilder.DropTable(
                name: "account_login");

            migrationBuilder.DropTable(
                name: "account_passkey");

            migrationBuilder.DropTable(
                name: "account_token");

            migrationBuilder.DropTable(
                name: "audit_entry");

            migrationBuilder.DropTable(
                name: "data_protection_key");

            migrationBuilder.DropTable(
                name: "plan_version");

            migrationBuilder.DropTable(
                name: "registered_practice");

            migrationBuilder.DropTable(
                name: "screening");

            migrationBuilder.DropTable(
                name: "account");

            migrationBuilder.DropTable(
                name: "race");

            migrationBuilder.DropTable(
                name: "client");

            migrationBuilder.DropTable(
                name: "practice");
        }
    }
}

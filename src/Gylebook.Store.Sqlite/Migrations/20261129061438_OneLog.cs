using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Gylebook.Store.Sqlite.Migrations
{
    /// <summary>
    /// One log of edits and versions for all nouns, with packed texts. Written by hand: the tables are made anew, since
    /// SQLite cannot drop a foreign key. What was damaged stays marked so, and no text is packed as the difference to it.
    /// </summary>
    public partial class OneLog : Migration
    {
        private static readonly string[] Edits = ["after", "at_ticks", "base_id", "before", "is_set_aside", "label", "owner_id", "parent_id", "tab_id"];
        private static readonly string[] OldEdits = ["after", "at_ticks", "before", "is_set_aside", "label", "parent_id", "recipe_id", "tab_id"];

        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            MakeEdits(migrationBuilder);
            MakeVersions(migrationBuilder);
            migrationBuilder.GuardAsAppendOnly("edits", "versions");
            Extend(migrationBuilder, "kits", "deleted_ticks", "document", "folded_name", "id", "is_demo", "name", "revision", "updated_ticks");
            Extend(migrationBuilder, "foods", "deleted_ticks", "document", "folded_name", "food_id", "id", "is_demo", "name", "revision", "updated_ticks");
            Extend(migrationBuilder, "waters", "deleted_ticks", "document", "folded_name", "id", "is_demo", "name", "recipe_id", "revision", "updated_ticks");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder) =>
            throw new NotSupportedException("The copy that was laid beside the book is the way back.");

        private static void MakeEdits(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "new_edits",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    owner_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    parent_id = table.Column<long>(type: "INTEGER", nullable: true),
                    base_id = table.Column<long>(type: "INTEGER", nullable: true),
                    before = table.Column<byte[]>(type: "BLOB", nullable: false),
                    after = table.Column<byte[]>(type: "BLOB", nullable: false),
                    label = table.Column<string>(type: "TEXT", nullable: false),
                    at_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    tab_id = table.Column<string>(type: "TEXT", nullable: false),
                    is_set_aside = table.Column<bool>(type: "INTEGER", nullable: false),
                    checksum = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_edits", x => x.id);
                    table.ForeignKey(
                        name: "fk_edits_base_id",
                        column: x => x.base_id,
                        principalTable: "edits",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_edits_parent_id",
                        column: x => x.parent_id,
                        principalTable: "edits",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            // Of each recipe's sound edits, every sixteenth is packed whole and the fifteen after it as differences to that.
            migrationBuilder.Sql(
                $"""
                WITH numbered AS (
                    SELECT id, recipe_id, row_number() OVER (PARTITION BY recipe_id ORDER BY id) - 1 AS place
                    FROM edits WHERE checksum = {HandWritten.SumOf(OldEdits)}),
                based AS (
                    SELECT id, first_value(id) OVER (PARTITION BY recipe_id, place / 16 ORDER BY id) AS base FROM numbered)
                INSERT INTO new_edits (id, owner_id, parent_id, base_id, before, after, label, at_ticks, tab_id, is_set_aside, checksum)
                SELECT
                    e.id, e.recipe_id, e.parent_id, w.id, {HandWritten.Packed}(e.before, e.after), {HandWritten.Packed}(e.after, w.after),
                    e.label, e.at_ticks, e.tab_id, e.is_set_aside, b.id IS NOT NULL
                FROM edits e
                LEFT JOIN based b ON b.id = e.id
                LEFT JOIN edits w ON w.id = b.base AND w.id <> e.id;

                DROP TABLE edits;
                ALTER TABLE new_edits RENAME TO edits;
                UPDATE edits SET checksum = CASE WHEN checksum = 1 THEN {HandWritten.SumOf(Edits)} ELSE ~{HandWritten.SumOf(Edits)} END;
                """);
            migrationBuilder.CreateIndex(
                name: "ix_edits_base_id",
                table: "edits",
                column: "base_id");

            migrationBuilder.CreateIndex(
                name: "ix_edits_owner_id_parent_id",
                table: "edits",
                columns: new[] { "owner_id", "parent_id" });

            migrationBuilder.CreateIndex(
                name: "ix_edits_parent_id",
                table: "edits",
                column: "parent_id");
        }

        private static void MakeVersions(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "new_versions",
                columns: table => new
                {
                    owner_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    document = table.Column<string>(type: "TEXT", nullable: false),
                    reason = table.Column<string>(type: "TEXT", nullable: false),
                    note = table.Column<string>(type: "TEXT", nullable: true),
                    cut_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    checksum = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_versions", x => new { x.owner_id, x.number });
                });

            // Renamed first: so the foreign key of gyles comes along.
            migrationBuilder.Sql(
                """
                ALTER TABLE versions RENAME COLUMN recipe_id TO owner_id;
                INSERT INTO new_versions (owner_id, number, document, reason, note, cut_ticks, checksum)
                SELECT owner_id, number, document, reason, note, cut_ticks, checksum FROM versions;
                DROP TABLE versions;
                ALTER TABLE new_versions RENAME TO versions;
                """);
            migrationBuilder.SealAgain(
                "versions",
                ["cut_ticks", "document", "note", "number", "reason", "owner_id"],
                ["cut_ticks", "document", "note", "number", "owner_id", "reason"]);
        }

        /// <summary>Lets a sheet stand on an edit.</summary>
        private static void Extend(MigrationBuilder migrationBuilder, string table, params string[] columns)
        {
            migrationBuilder.Sql($"ALTER TABLE {table} ADD COLUMN edit_id INTEGER NULL CONSTRAINT fk_{table}_edit_id REFERENCES edits (id) ON DELETE RESTRICT;");
            migrationBuilder.CreateIndex(
                name: $"ix_{table}_edit_id",
                table: table,
                column: "edit_id");
            migrationBuilder.SealAgain(table, columns, [.. columns.Append("edit_id").Order(StringComparer.Ordinal)]);
        }
    }
}

using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Gylebook.Store.Sqlite.Migrations
{
    /// <summary>Sheets of malts, hops, yeasts and what else is on the shelf.</summary>
    public partial class LarderSheets : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "larder_sheets",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "TEXT", nullable: false),
                    form = table.Column<string>(type: "TEXT", nullable: false),
                    sheet_id = table.Column<string>(type: "TEXT", nullable: true),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    folded_name = table.Column<string>(type: "TEXT", nullable: false),
                    document = table.Column<string>(type: "TEXT", nullable: false),
                    revision = table.Column<long>(type: "INTEGER", nullable: false),
                    edit_id = table.Column<long>(type: "INTEGER", nullable: true),
                    updated_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    deleted_ticks = table.Column<long>(type: "INTEGER", nullable: true),
                    is_demo = table.Column<bool>(type: "INTEGER", nullable: false),
                    checksum = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_larder_sheets", x => x.id);
                    table.ForeignKey(
                        name: "fk_larder_sheets_edit_id",
                        column: x => x.edit_id,
                        principalTable: "edits",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_larder_sheets_edit_id",
                table: "larder_sheets",
                column: "edit_id");

            migrationBuilder.CreateIndex(
                name: "ix_larder_sheets_form_sheet_id",
                table: "larder_sheets",
                columns: new[] { "form", "sheet_id" });

            migrationBuilder.CreateIndex(
                name: "ix_larder_sheets_name",
                table: "larder_sheets",
                column: "name");

            migrationBuilder.CreateIndex(
                name: "ix_larder_sheets_updated_ticks",
                table: "larder_sheets",
                column: "updated_ticks");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "larder_sheets");
        }
    }
}

using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Gylebook.Store.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Waters : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "waters",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "TEXT", nullable: false),
                    recipe_id = table.Column<Guid>(type: "TEXT", nullable: true),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    folded_name = table.Column<string>(type: "TEXT", nullable: false),
                    document = table.Column<string>(type: "TEXT", nullable: false),
                    revision = table.Column<long>(type: "INTEGER", nullable: false),
                    updated_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    deleted_ticks = table.Column<long>(type: "INTEGER", nullable: true),
                    is_demo = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_waters", x => x.id);
                    table.ForeignKey(
                        name: "fk_waters_recipe_id",
                        column: x => x.recipe_id,
                        principalTable: "recipes",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_waters_name",
                table: "waters",
                column: "name");

            migrationBuilder.CreateIndex(
                name: "ix_waters_recipe_id",
                table: "waters",
                column: "recipe_id",
                unique: true,
                filter: "recipe_id IS NOT NULL AND deleted_ticks IS NULL");

            migrationBuilder.CreateIndex(
                name: "ix_waters_updated_ticks",
                table: "waters",
                column: "updated_ticks");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "waters");
        }
    }
}

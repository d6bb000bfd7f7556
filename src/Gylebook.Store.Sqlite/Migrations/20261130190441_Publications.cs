using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Gylebook.Store.Sqlite.Migrations
{
    /// <summary>Recipes on public pages, and what was put right in them.</summary>
    public partial class Publications : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "errata",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    recipe_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    version_number = table.Column<int>(type: "INTEGER", nullable: false),
                    written_day = table.Column<int>(type: "INTEGER", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    checksum = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_errata", x => x.id);
                    table.ForeignKey(
                        name: "fk_errata_recipe_id",
                        column: x => x.recipe_id,
                        principalTable: "recipes",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "publications",
                columns: table => new
                {
                    recipe_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    slug = table.Column<string>(type: "TEXT", nullable: false),
                    version_number = table.Column<int>(type: "INTEGER", nullable: false),
                    gyle_id = table.Column<Guid>(type: "TEXT", nullable: true),
                    document = table.Column<string>(type: "TEXT", nullable: false),
                    published_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    checksum = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_publications", x => x.recipe_id);
                    table.ForeignKey(
                        name: "fk_publications_recipe_id",
                        column: x => x.recipe_id,
                        principalTable: "recipes",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_errata_recipe_id",
                table: "errata",
                column: "recipe_id");

            migrationBuilder.CreateIndex(
                name: "ix_publications_slug",
                table: "publications",
                column: "slug",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder) =>
            throw new NotSupportedException("The copy that was laid beside the book is the way back.");
    }
}

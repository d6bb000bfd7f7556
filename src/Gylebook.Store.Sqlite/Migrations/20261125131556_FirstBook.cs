using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Gylebook.Store.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class FirstBook : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "foods",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "TEXT", nullable: false),
                    food_id = table.Column<string>(type: "TEXT", nullable: true),
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
                    table.PrimaryKey("pk_foods", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "kits",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "TEXT", nullable: false),
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
                    table.PrimaryKey("pk_kits", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "recipes",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    folded_name = table.Column<string>(type: "TEXT", nullable: false),
                    created_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    updated_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    deleted_ticks = table.Column<long>(type: "INTEGER", nullable: true),
                    is_demo = table.Column<bool>(type: "INTEGER", nullable: false),
                    published_version = table.Column<int>(type: "INTEGER", nullable: true),
                    published_ticks = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_recipes", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "settings",
                columns: table => new
                {
                    key = table.Column<string>(type: "TEXT", nullable: false),
                    value = table.Column<string>(type: "TEXT", nullable: false),
                    updated_ticks = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_settings", x => x.key);
                });

            migrationBuilder.CreateTable(
                name: "edits",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    recipe_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    parent_id = table.Column<long>(type: "INTEGER", nullable: true),
                    before = table.Column<string>(type: "TEXT", nullable: false),
                    after = table.Column<string>(type: "TEXT", nullable: false),
                    label = table.Column<string>(type: "TEXT", nullable: false),
                    at_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    tab_id = table.Column<string>(type: "TEXT", nullable: false),
                    is_set_aside = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_edits", x => x.id);
                    table.ForeignKey(
                        name: "fk_edits_parent_id",
                        column: x => x.parent_id,
                        principalTable: "edits",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_edits_recipe_id",
                        column: x => x.recipe_id,
                        principalTable: "recipes",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "versions",
                columns: table => new
                {
                    recipe_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    document = table.Column<string>(type: "TEXT", nullable: false),
                    reason = table.Column<string>(type: "TEXT", nullable: false),
                    note = table.Column<string>(type: "TEXT", nullable: true),
                    cut_ticks = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_versions", x => new { x.recipe_id, x.number });
                    table.ForeignKey(
                        name: "fk_versions_recipe_id",
                        column: x => x.recipe_id,
                        principalTable: "recipes",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "drafts",
                columns: table => new
                {
                    recipe_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    document = table.Column<string>(type: "TEXT", nullable: false),
                    revision = table.Column<long>(type: "INTEGER", nullable: false),
                    edit_id = table.Column<long>(type: "INTEGER", nullable: true),
                    updated_ticks = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_drafts", x => x.recipe_id);
                    table.ForeignKey(
                        name: "fk_drafts_edit_id",
                        column: x => x.edit_id,
                        principalTable: "edits",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_drafts_recipe_id",
                        column: x => x.recipe_id,
                        principalTable: "recipes",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "gyles",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    recipe_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    version_number = table.Column<int>(type: "INTEGER", nullable: true),
                    kit_id = table.Column<Guid>(type: "TEXT", nullable: true),
                    status = table.Column<string>(type: "TEXT", nullable: false),
                    planned_ticks = table.Column<long>(type: "INTEGER", nullable: true),
                    started_ticks = table.Column<long>(type: "INTEGER", nullable: true),
                    updated_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    deleted_ticks = table.Column<long>(type: "INTEGER", nullable: true),
                    is_demo = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_gyles", x => x.id);
                    table.ForeignKey(
                        name: "fk_gyles_kit_id",
                        column: x => x.kit_id,
                        principalTable: "kits",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_gyles_recipe_id",
                        column: x => x.recipe_id,
                        principalTable: "recipes",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_gyles_recipe_id_version_number",
                        columns: x => new { x.recipe_id, x.version_number },
                        principalTable: "versions",
                        principalColumns: new[] { "recipe_id", "number" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "plans",
                columns: table => new
                {
                    gyle_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    document = table.Column<string>(type: "TEXT", nullable: false),
                    frozen_ticks = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_plans", x => x.gyle_id);
                    table.ForeignKey(
                        name: "fk_plans_gyle_id",
                        column: x => x.gyle_id,
                        principalTable: "gyles",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "portions",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    gyle_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    share = table.Column<double>(type: "REAL", nullable: false),
                    from_stage = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_portions", x => x.id);
                    table.ForeignKey(
                        name: "fk_portions_gyle_id",
                        column: x => x.gyle_id,
                        principalTable: "gyles",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "actions",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    portion_id = table.Column<long>(type: "INTEGER", nullable: false),
                    entry_id = table.Column<Guid>(type: "TEXT", nullable: true),
                    at_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    recorded_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    what = table.Column<string>(type: "TEXT", nullable: false),
                    stage = table.Column<string>(type: "TEXT", nullable: true),
                    mass_kg = table.Column<double>(type: "REAL", nullable: true),
                    volume_l = table.Column<double>(type: "REAL", nullable: true),
                    temperature_c = table.Column<double>(type: "REAL", nullable: true),
                    replaces_id = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_actions", x => x.id);
                    table.ForeignKey(
                        name: "fk_actions_portion_id",
                        column: x => x.portion_id,
                        principalTable: "portions",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_actions_replaces_id",
                        column: x => x.replaces_id,
                        principalTable: "actions",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "readings",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    portion_id = table.Column<long>(type: "INTEGER", nullable: false),
                    entry_id = table.Column<Guid>(type: "TEXT", nullable: true),
                    at_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    recorded_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    stage = table.Column<string>(type: "TEXT", nullable: true),
                    instrument = table.Column<string>(type: "TEXT", nullable: true),
                    gravity_sg = table.Column<double>(type: "REAL", nullable: true),
                    volume_l = table.Column<double>(type: "REAL", nullable: true),
                    temperature_c = table.Column<double>(type: "REAL", nullable: true),
                    ph = table.Column<double>(type: "REAL", nullable: true),
                    pressure_bar = table.Column<double>(type: "REAL", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true),
                    replaces_id = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_readings", x => x.id);
                    table.ForeignKey(
                        name: "fk_readings_portion_id",
                        column: x => x.portion_id,
                        principalTable: "portions",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_readings_replaces_id",
                        column: x => x.replaces_id,
                        principalTable: "readings",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_actions_entry_id",
                table: "actions",
                column: "entry_id",
                unique: true,
                filter: "entry_id IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "ix_actions_portion_id_at_ticks",
                table: "actions",
                columns: new[] { "portion_id", "at_ticks" });

            migrationBuilder.CreateIndex(
                name: "ix_actions_replaces_id",
                table: "actions",
                column: "replaces_id",
                filter: "replaces_id IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "ix_drafts_edit_id",
                table: "drafts",
                column: "edit_id");

            migrationBuilder.CreateIndex(
                name: "ix_edits_parent_id",
                table: "edits",
                column: "parent_id");

            migrationBuilder.CreateIndex(
                name: "ix_edits_recipe_id_parent_id",
                table: "edits",
                columns: new[] { "recipe_id", "parent_id" });

            migrationBuilder.CreateIndex(
                name: "ix_foods_food_id",
                table: "foods",
                column: "food_id");

            migrationBuilder.CreateIndex(
                name: "ix_foods_name",
                table: "foods",
                column: "name");

            migrationBuilder.CreateIndex(
                name: "ix_foods_updated_ticks",
                table: "foods",
                column: "updated_ticks");

            migrationBuilder.CreateIndex(
                name: "ix_gyles_kit_id",
                table: "gyles",
                column: "kit_id");

            migrationBuilder.CreateIndex(
                name: "ix_gyles_recipe_id_version_number",
                table: "gyles",
                columns: new[] { "recipe_id", "version_number" });

            migrationBuilder.CreateIndex(
                name: "ix_gyles_updated_ticks",
                table: "gyles",
                column: "updated_ticks");

            migrationBuilder.CreateIndex(
                name: "ix_kits_name",
                table: "kits",
                column: "name");

            migrationBuilder.CreateIndex(
                name: "ix_kits_updated_ticks",
                table: "kits",
                column: "updated_ticks");

            migrationBuilder.CreateIndex(
                name: "ix_portions_gyle_id_name",
                table: "portions",
                columns: new[] { "gyle_id", "name" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_readings_entry_id",
                table: "readings",
                column: "entry_id",
                unique: true,
                filter: "entry_id IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "ix_readings_portion_id_at_ticks",
                table: "readings",
                columns: new[] { "portion_id", "at_ticks" });

            migrationBuilder.CreateIndex(
                name: "ix_readings_replaces_id",
                table: "readings",
                column: "replaces_id",
                filter: "replaces_id IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "ix_recipes_name",
                table: "recipes",
                column: "name");

            migrationBuilder.CreateIndex(
                name: "ix_recipes_updated_ticks",
                table: "recipes",
                column: "updated_ticks");

            migrationBuilder.SignAsBook();
            migrationBuilder.GuardAsAppendOnly("edits", "versions", "plans", "readings", "actions");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "actions");

            migrationBuilder.DropTable(
                name: "drafts");

            migrationBuilder.DropTable(
                name: "foods");

            migrationBuilder.DropTable(
                name: "plans");

            migrationBuilder.DropTable(
                name: "readings");

            migrationBuilder.DropTable(
                name: "settings");

            migrationBuilder.DropTable(
                name: "edits");

            migrationBuilder.DropTable(
                name: "portions");

            migrationBuilder.DropTable(
                name: "gyles");

            migrationBuilder.DropTable(
                name: "kits");

            migrationBuilder.DropTable(
                name: "versions");

            migrationBuilder.DropTable(
                name: "recipes");
        }
    }
}

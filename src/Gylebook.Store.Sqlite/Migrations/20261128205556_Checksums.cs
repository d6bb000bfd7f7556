using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Gylebook.Store.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Checksums : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "waters",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "versions",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "settings",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "recipes",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "readings",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "portions",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "plans",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "kits",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "gyles",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "foods",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "edits",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "drafts",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<long>(
                name: "checksum",
                table: "actions",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.CreateIndex(
                name: "ix_drafts_recipe_id_revision",
                table: "drafts",
                columns: new[] { "recipe_id", "revision" });

            migrationBuilder.LiftGuard("edits", "versions", "plans", "readings", "actions");
            migrationBuilder.Seal("actions", "at_ticks", "entry_id", "mass_kg", "portion_id", "recorded_ticks", "replaces_id", "stage", "temperature_c", "volume_l", "what");
            migrationBuilder.Seal("drafts", "document", "edit_id", "recipe_id", "revision", "updated_ticks");
            migrationBuilder.Seal("edits", "after", "at_ticks", "before", "is_set_aside", "label", "parent_id", "recipe_id", "tab_id");
            migrationBuilder.Seal("foods", "deleted_ticks", "document", "folded_name", "food_id", "id", "is_demo", "name", "revision", "updated_ticks");
            migrationBuilder.Seal("gyles", "deleted_ticks", "id", "is_demo", "kit_id", "name", "planned_ticks", "recipe_id", "started_ticks", "status", "updated_ticks", "version_number");
            migrationBuilder.Seal("kits", "deleted_ticks", "document", "folded_name", "id", "is_demo", "name", "revision", "updated_ticks");
            migrationBuilder.Seal("plans", "document", "frozen_ticks", "gyle_id");
            migrationBuilder.Seal("portions", "from_stage", "gyle_id", "name", "share");
            migrationBuilder.Seal("readings", "at_ticks", "entry_id", "gravity_sg", "instrument", "note", "ph", "portion_id", "pressure_bar", "recorded_ticks", "replaces_id", "stage", "temperature_c", "volume_l");
            migrationBuilder.Seal("recipes", "created_ticks", "deleted_ticks", "folded_name", "id", "is_demo", "name", "published_ticks", "published_version", "updated_ticks");
            migrationBuilder.Seal("settings", "key", "updated_ticks", "value");
            migrationBuilder.Seal("versions", "cut_ticks", "document", "note", "number", "reason", "recipe_id");
            migrationBuilder.Seal("waters", "deleted_ticks", "document", "folded_name", "id", "is_demo", "name", "recipe_id", "revision", "updated_ticks");
            migrationBuilder.GuardAsAppendOnly("edits", "versions", "plans", "readings", "actions");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_drafts_recipe_id_revision",
                table: "drafts");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "waters");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "versions");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "settings");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "recipes");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "readings");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "portions");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "plans");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "kits");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "gyles");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "foods");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "edits");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "drafts");

            migrationBuilder.DropColumn(
                name: "checksum",
                table: "actions");
        }
    }
}

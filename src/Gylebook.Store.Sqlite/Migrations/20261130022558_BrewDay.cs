using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Gylebook.Store.Sqlite.Migrations
{
    /// <summary>Readings as they were typed, and actions that belong to a step, a lot, a timer or another entry. Actions written before were in the brewer's own words.</summary>
    public partial class BrewDay : Migration
    {
        private static readonly string[] Actions = ["at_ticks", "entry_id", "mass_kg", "portion_id", "recorded_ticks", "replaces_id", "stage", "temperature_c", "volume_l", "what"];
        private static readonly string[] Readings = ["at_ticks", "entry_id", "gravity_sg", "instrument", "note", "ph", "portion_id", "pressure_bar", "recorded_ticks", "replaces_id", "stage", "temperature_c", "volume_l"];

        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "typed",
                table: "readings",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "item",
                table: "actions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "kind",
                table: "actions",
                type: "TEXT",
                nullable: false,
                defaultValue: "Said");

            migrationBuilder.AddColumn<string>(
                name: "lot",
                table: "actions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "step",
                table: "actions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<Guid>(
                name: "undoes",
                table: "actions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "until_ticks",
                table: "actions",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.CreateIndex(
                name: "ix_actions_lot",
                table: "actions",
                column: "lot",
                filter: "lot IS NOT NULL");

            migrationBuilder.LiftGuard("readings", "actions");
            migrationBuilder.SealAgain("readings", Readings, [.. Readings.Append("typed").Order(StringComparer.Ordinal)]);
            migrationBuilder.SealAgain("actions", Actions, [.. Actions.Concat(["item", "kind", "lot", "step", "undoes", "until_ticks"]).Order(StringComparer.Ordinal)]);
            migrationBuilder.GuardAsAppendOnly("readings", "actions");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder) =>
            throw new NotSupportedException("The copy that was laid beside the book is the way back.");
    }
}

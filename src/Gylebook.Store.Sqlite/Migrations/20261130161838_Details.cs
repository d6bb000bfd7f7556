using System;
using System.Linq;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Gylebook.Store.Sqlite.Migrations
{
    /// <summary>Actions that say more than words: what was packaged, tasted, compared.</summary>
    public partial class Details : Migration
    {
        private static readonly string[] Actions =
            ["at_ticks", "entry_id", "item", "kind", "lot", "mass_kg", "portion_id", "recorded_ticks", "replaces_id", "stage", "step", "temperature_c", "undoes", "until_ticks", "volume_l", "what"];

        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "detail",
                table: "actions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.LiftGuard("actions");
            migrationBuilder.SealAgain("actions", Actions, [.. Actions.Append("detail").Order(StringComparer.Ordinal)]);
            migrationBuilder.GuardAsAppendOnly("actions");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder) =>
            throw new NotSupportedException("The copy that was laid beside the book is the way back.");
    }
}

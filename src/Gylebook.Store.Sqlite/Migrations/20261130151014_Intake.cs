using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Gylebook.Store.Sqlite.Migrations
{
    /// <summary>Devices, where they are, and what they send.</summary>
    public partial class Intake : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "devices",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    token_hash = table.Column<string>(type: "TEXT", nullable: true),
                    slope = table.Column<double>(type: "REAL", nullable: false),
                    offset_sg = table.Column<double>(type: "REAL", nullable: false),
                    offset_c = table.Column<double>(type: "REAL", nullable: false),
                    created_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    retired_ticks = table.Column<long>(type: "INTEGER", nullable: true),
                    checksum = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_devices", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "device_places",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    device_id = table.Column<long>(type: "INTEGER", nullable: false),
                    portion_id = table.Column<long>(type: "INTEGER", nullable: false),
                    from_ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    until_ticks = table.Column<long>(type: "INTEGER", nullable: true),
                    checksum = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_device_places", x => x.id);
                    table.ForeignKey(
                        name: "fk_device_places_device_id",
                        column: x => x.device_id,
                        principalTable: "devices",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_device_places_portion_id",
                        column: x => x.portion_id,
                        principalTable: "portions",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            // By hand for its last two words: the row stands in its key's own tree, and needs no second one.
            migrationBuilder.Sql(
                """
                CREATE TABLE sensor_rows (
                    device_id INTEGER NOT NULL,
                    at_ticks INTEGER NOT NULL,
                    sent_key INTEGER NOT NULL,
                    arrived_ticks INTEGER NOT NULL,
                    gravity_sg REAL NULL,
                    temperature_c REAL NULL,
                    pressure_bar REAL NULL,
                    battery_v REAL NULL,
                    sent_id INTEGER NULL,
                    checksum INTEGER NOT NULL,
                    CONSTRAINT pk_sensor_rows PRIMARY KEY (device_id, at_ticks, sent_key),
                    CONSTRAINT fk_sensor_rows_device_id FOREIGN KEY (device_id) REFERENCES devices (id) ON DELETE RESTRICT
                ) WITHOUT ROWID;
                """);

            migrationBuilder.CreateIndex(
                name: "ix_device_places_device_id",
                table: "device_places",
                column: "device_id",
                unique: true,
                filter: "until_ticks IS NULL");

            migrationBuilder.CreateIndex(
                name: "ix_device_places_device_id_from_ticks",
                table: "device_places",
                columns: new[] { "device_id", "from_ticks" });

            migrationBuilder.CreateIndex(
                name: "ix_device_places_portion_id",
                table: "device_places",
                column: "portion_id");

            migrationBuilder.CreateIndex(
                name: "ix_devices_token_hash",
                table: "devices",
                column: "token_hash",
                unique: true,
                filter: "token_hash IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "ix_sensor_rows_device_id_sent_id",
                table: "sensor_rows",
                columns: new[] { "device_id", "sent_id" },
                unique: true,
                filter: "sent_id IS NOT NULL");

            migrationBuilder.GuardAsAppendOnly("sensor_rows");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder) =>
            throw new NotSupportedException("The copy that was laid beside the book is the way back.");
    }
}

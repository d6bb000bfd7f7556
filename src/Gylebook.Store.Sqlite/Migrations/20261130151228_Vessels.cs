using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Gylebook.Store.Sqlite.Migrations
{
    /// <summary>Days for which gyles have vessels.</summary>
    public partial class Vessels : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "stays",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    gyle_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    vessel = table.Column<string>(type: "TEXT", nullable: false),
                    from_day = table.Column<int>(type: "INTEGER", nullable: false),
                    until_day = table.Column<int>(type: "INTEGER", nullable: true),
                    checksum = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_stays", x => x.id);
                    table.ForeignKey(
                        name: "fk_stays_gyle_id",
                        column: x => x.gyle_id,
                        principalTable: "gyles",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_stays_gyle_id",
                table: "stays",
                column: "gyle_id");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder) =>
            throw new NotSupportedException("The copy that was laid beside the book is the way back.");
    }
}

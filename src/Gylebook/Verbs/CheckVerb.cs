using System.ComponentModel;
using Gylebook.Recipes;
using Gylebook.Store.Sqlite;
using Gylebook.Terminal;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook check FILE [--kit FILE] [--texts FOLDER] [--json]</summary>
internal sealed class CheckVerb : Command<CheckVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : KitSettings
    {
        /// <summary>The file.</summary>
        [CommandArgument(0, "<FILE>")]
        [Description("A recipe, a kit, a water plan, a sheet of the larder or a food of ours; or a book.")]
        public required string File { get; init; }

        /// <summary>Where to write sound texts.</summary>
        [CommandOption("--texts <FOLDER>")]
        [Description("Of a damaged book: the folder to write the newest sound text of each damaged recipe, kit, food and water plan into.")]
        public string? Texts { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [("--texts", "a folder", Texts)];
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        IReadOnlyList<Finding> findings = BookCheck.LooksLikeBook(settings.File)
            ? DamagedBook.Check(settings.File, settings.Texts)
            : AnyFile.Check(settings.File, settings.Kit);
        return FindingLines.Tell(findings, settings.Json);
    }
}

using System.ComponentModel;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook import FILE… [--book FILE] [--replace] [--keep-both] [--as NAME] [--even-unreadable] [--json]</summary>
internal sealed class ImportVerb : AsyncCommand<ImportVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : BookOption
    {
        /// <summary>The files.</summary>
        [CommandArgument(0, "<FILE>")]
        [Description("Recipes, kits, water plans, foods and sheets of the larder, as many as you like.")]
        public required string[] Files { get; init; }

        /// <summary>Another name.</summary>
        [CommandOption("--as <NAME>")]
        [Description("The name it enters under, if its own is in the book already. For one file.")]
        public string? As { get; init; }

        /// <summary>Whether to replace.</summary>
        [CommandOption("--replace")]
        [Description("Put its text in the place of the one that has its name or id, as an edit that undo takes back.")]
        public bool Replace { get; init; }

        /// <summary>Whether to keep both.</summary>
        [CommandOption("--keep-both")]
        [Description("Keep the one that has its name or id, and put this one beside it under the next free name.")]
        public bool KeepBoth { get; init; }

        /// <summary>Whether to take what cannot be read.</summary>
        [CommandOption("--even-unreadable")]
        [Description("Take a file although fields of it cannot be read: it enters as it is, with its findings.")]
        public bool EvenUnreadable { get; init; }

        /// <summary>What to do when a name is there already.</summary>
        internal ClashAnswer Answer =>
            As is not null ? new ClashAnswer.Called(As) : Replace ? new ClashAnswer.Replace() : KeepBoth ? new ClashAnswer.KeepBoth() : new ClashAnswer.Ask();

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            CommandLine.NoneLacksItsValue(("--book", "a file", Book), ("--as", "a name", As)) is { Successful: false } lacking ? lacking
            : new[] { As is not null, Replace, KeepBoth }.Count(isAsked => isAsked) > 1 ? ValidationResult.Error("Of --as, --replace and --keep-both only one can be done.")
            : As is not null && Files.Length > 1 ? ValidationResult.Error($"--as names one file, and there are {Files.Length}.")
            : As is not null && FileInHand.FaultOf(As) is { } fault ? ValidationResult.Error($"--as: {fault}.")
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (await settings.OpenAsync("to put files into", cancellationToken) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        List<ImportedFile> files = [];
        foreach (string path in settings.Files)
        {
            files.Add(await ImportedFile.TakeAsync(book, path, settings.Answer, settings.EvenUnreadable, cancellationToken));
        }

        ImportedFile.Tell(files, settings.Json);
        return files.All(file => file.IsIn) ? 0 : 1;
    }
}

using System.ComponentModel;
using Gylebook.Forecast.Json;
using Gylebook.Recipes.Interchange;
using Gylebook.Store;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook import FILE…|--undo [--book FILE] [--replace] [--keep-both] [--as NAME] [--even-unreadable] [--json]</summary>
internal sealed class ImportVerb : AsyncCommand<ImportVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : BookOption
    {
        /// <summary>The files.</summary>
        [CommandArgument(0, "[FILE]")]
        [Description("Recipes, kits, water plans, foods and sheets of the larder, as many as you like; BeerJSON and BeerXML too.")]
        public string[] Files { get; init; } = [];

        /// <summary>Whether to take the last landing back.</summary>
        [CommandOption("--undo")]
        [Description("Take back all that the last BeerJSON or BeerXML file brought: it goes into the bin. What you changed since stays.")]
        public bool Undo { get; init; }

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
            : Undo && (Files.Length > 0 || As is not null || Replace || KeepBoth || EvenUnreadable) ? ValidationResult.Error("--undo goes alone: it takes back the last file that came in.")
            : !Undo && Files.Length == 0 ? ValidationResult.Error("Name a file to put into the book.")
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
        if (settings.Undo)
        {
            return Tell(await book.Landings.UndoAsync(cancellation: cancellationToken), settings.Json);
        }

        List<TakenFile> files = [];
        foreach (string path in settings.Files)
        {
            files.Add(await TakenFile.TakeAsync(book, path, settings.Answer, settings.EvenUnreadable, cancellationToken));
        }

        TakenFile.Tell(files, settings.Json);
        return files.All(file => file.IsIn) ? 0 : 1;
    }

    private static int Tell(LandingUndone? undone, bool json)
    {
        if (json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Text("undone", undone?.From);
                pen.Texts("gone", undone?.Gone ?? []);
                pen.Texts("stayed", undone?.Stayed ?? []);
            }));
        }
        else if (undone is null)
        {
            Console.Error.WriteLine("Nothing to take back: no BeerJSON or BeerXML file came in that is not back out already.");
        }
        else
        {
            Console.WriteLine(CommandLine.OneLine($"{undone.From}: {undone.Gone.Count} of the things it brought are in the bin{(undone.Gone.Count > 0 ? $": {string.Join(", ", undone.Gone)}" : "")}."));
            foreach (string name in undone.Stayed)
            {
                Console.WriteLine(CommandLine.OneLine($"  {name} stays: it was changed or brewed since, or is gone already."));
            }
        }

        return undone is null ? 1 : 0;
    }
}

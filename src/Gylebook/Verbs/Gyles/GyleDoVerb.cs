using System.ComponentModel;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Forecast.Json;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle do GYLE TEXT [--step KEY] [--tick KEY] [--skip KEY] [--undo ENTRY] [--book FILE] [--json]</summary>
internal sealed class GyleDoVerb : GyleVerb<GyleDoVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : PortionSettings
    {
        /// <summary>What was done.</summary>
        [CommandArgument(1, "[TEXT]")]
        [Description("What was done, in your own words; why, for a step that is left out.")]
        public string? Text { get; init; }

        /// <summary>A step that is done.</summary>
        [CommandOption("--step <KEY>")]
        [Description("This step is done, by its key in gylebook gyle steps.")]
        public string? Step { get; init; }

        /// <summary>What went in.</summary>
        [CommandOption("--tick <KEY>")]
        [Description("This went in, by its key: line-3.")]
        public string? Tick { get; init; }

        /// <summary>A step that is left out.</summary>
        [CommandOption("--skip <KEY>")]
        [Description("This step is left out.")]
        public string? Skip { get; init; }

        /// <summary>An entry that is taken back.</summary>
        [CommandOption("--undo <ENTRY>")]
        [Description("Take this entry back, by its number.")]
        public string? Undo { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [("--step", "a step's key", Step), ("--tick", "a key", Tick), ("--skip", "a step's key", Skip), ("--undo", "an entry's number", Undo), .. base.Valued];

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            base.Validate() is { Successful: false } lacking ? lacking
            : new[] { Step, Tick, Skip, Undo }.Count(asked => asked is not null) > 1 ? ValidationResult.Error("Of --step, --tick, --skip and --undo only one can be said at a time.")
            : string.IsNullOrWhiteSpace(Text) && Step is null && Tick is null && Skip is null && Undo is null ? ValidationResult.Error("Say what was done: gylebook gyle do \"My gyle\" \"stirred in the flour\".")
            : Text?.Length > MostText ? ValidationResult.Error(Invariant($"That is {Text.Length} characters; at most {MostText} fit into one entry."))
            : ValidationResult.Success();

        private const int MostText = 2000;
    }

    /// <inheritdoc/>
    protected override async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        if (settings.IsWrong(gyle, isNeeded: false))
        {
            return 1;
        }

        DateTimeOffset now = TimeProvider.System.GetUtcNow();
        BrewAction said = new() { At = now, EntryId = Guid.CreateVersion7(now), What = settings.Text?.Trim() ?? "", Portion = settings.Portion };
        if (Meant(gyle, settings, said, out string fault) is not { } action)
        {
            Console.Error.WriteLine(CommandLine.OneLine(fault));
            return 1;
        }

        await desk.DoAsync(gyle, [action], cancellation);
        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Text("entry", action.EntryId.ToString());
                pen.Text("kind", action.Kind.ToString().ToLowerInvariant());
                pen.Text("step", action.Step);
                pen.Text("item", action.Item);
                pen.Text("text", action.What);
            }));
        }
        else
        {
            Console.WriteLine($"Written into the log, entry {action.EntryId}.");
        }

        return 0;
    }

    private static BrewAction? Meant(OpenGyle gyle, Settings settings, BrewAction said, out string fault)
    {
        string keys = string.Join(", ", gyle.Log.Steps.Select(step => step.Step.Key));
        fault = "";
        if ((settings.Step ?? settings.Skip) is { } key)
        {
            fault = $"\"{key}\" is no step of this gyle; they are {keys}.";
            return gyle.Log.Steps.FirstOrDefault(step => step.Step.Key == key) is not { } step ? null
                : said with { Kind = settings.Step is not null ? ActionKind.Done : ActionKind.Skipped, Step = key, Stage = step.Step.Stage };
        }

        if (settings.Tick is { } item)
        {
            StepItem[] all = [.. gyle.Log.Steps.SelectMany(step => step.Step.Items)];
            fault = $"\"{item}\" is nothing that goes in; there are {string.Join(", ", all.Select(one => $"{one.Key} ({one.What})"))}.";
            return gyle.Log.Steps.FirstOrDefault(step => step.Step.Items.Any(one => one.Key == item)) is { } at ? GyleDesk.Tick(at.Step, at.Step.Items.First(one => one.Key == item), said) : null;
        }

        if (settings.Undo is { } entry)
        {
            fault = $"\"{entry}\" is the number of no entry of this gyle.";
            return Guid.TryParse(entry, out Guid id) && (gyle.Log.Actions.Any(action => action.EntryId == id) || gyle.Log.Readings.Any(reading => reading.EntryId == id))
                ? said with { Kind = ActionKind.Undone, Undoes = id } : null;
        }

        return said;
    }
}

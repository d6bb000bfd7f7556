using System.ComponentModel;
using Gylebook.Forecast.Json;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Devices;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Devices;

/// <summary>gylebook device add NAME [--kind KIND] [--gyle GYLE] [--book FILE] [--json]</summary>
internal sealed class DeviceAddVerb : AsyncCommand<DeviceAddVerb.Settings>
{
    private static readonly (string Word, DeviceKind Kind)[] Kinds = [("float", DeviceKind.Floating), ("thermometer", DeviceKind.Thermometer), ("other", DeviceKind.Other)];

    /// <summary>What a kind is called on the terminal and in JSON.</summary>
    public static string WordOf(DeviceKind kind) => Kinds.FirstOrDefault(one => one.Kind == kind).Word ?? "table";

    /// <summary>What it takes.</summary>
    internal sealed class Settings : BookOption
    {
        /// <summary>What to call it.</summary>
        [CommandArgument(0, "<NAME>")]
        [Description("What to call it.")]
        public required string Name { get; init; }

        /// <summary>What it is.</summary>
        [CommandOption("--kind <KIND>")]
        [Description("float, thermometer or other; a float when unsaid.")]
        public string? Kind { get; init; }

        /// <summary>Where it is.</summary>
        [CommandOption("--gyle <GYLE>")]
        [Description("The gyle it is in from now on, by its name.")]
        public string? Gyle { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            CommandLine.NoneLacksItsValue(("--book", "a file", Book), ("--kind", "a word", Kind), ("--gyle", "a gyle", Gyle)) is { Successful: false } lacking ? lacking
            : Kind is not null && !Kinds.Any(kind => kind.Word == Kind) ? ValidationResult.Error($"--kind {Kind}: it is one of {string.Join(", ", Kinds.Select(kind => kind.Word))}.")
            : string.IsNullOrWhiteSpace(Name) || Name.Trim().Length > BookDevices.LongestName ? ValidationResult.Error(Invariant($"A device's name has 1 to {BookDevices.LongestName} letters; this one has {Name.Trim().Length}."))
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (await settings.OpenAsync("to add a device to", cancellationToken) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        (long Portion, string Name)? into = settings.Gyle is { } called ? await FoundGyle.FindAsync(book, called, cancellationToken) : null;
        if (settings.Gyle is not null && into is null)
        {
            return 1;
        }

        DeviceKind kind = settings.Kind is { } word ? Kinds.First(one => one.Word == word).Kind : DeviceKind.Floating;
        NewToken made = await new DeviceDesk(book).AddAsync(settings.Name, kind, cancellationToken);
        if (into is { } there)
        {
            await book.Devices.MoveAsync(made.Id, there.Portion, cancellation: cancellationToken);
        }

        Tell(settings, made, into?.Name);
        return 0;
    }

    private static void Tell(Settings settings, NewToken made, string? gyle)
    {
        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Text("name", settings.Name.Trim());
                pen.Text("token", made.Token);
                pen.Text("gyle", gyle);
            }));
            return;
        }

        Console.WriteLine(CommandLine.OneLine($"\"{settings.Name.Trim()}\" is added{(gyle is null ? "" : $", and is in \"{gyle}\" from now on")}. Its token, which is told this once:"));
        Console.WriteLine(made.Token);
    }
}

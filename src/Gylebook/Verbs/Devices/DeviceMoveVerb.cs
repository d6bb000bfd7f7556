using System.ComponentModel;
using Gylebook.Store;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Devices;

/// <summary>gylebook device move NAME [--gyle GYLE] [--out] [--book FILE]</summary>
internal sealed class DeviceMoveVerb : AsyncCommand<DeviceMoveVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : BookOption
    {
        /// <summary>Which device.</summary>
        [CommandArgument(0, "<NAME>")]
        [Description("The device, by its name.")]
        public required string Name { get; init; }

        /// <summary>Where to.</summary>
        [CommandOption("--gyle <GYLE>")]
        [Description("The gyle it is in from now on, by its name.")]
        public string? Gyle { get; init; }

        /// <summary>Whether it comes out.</summary>
        [CommandOption("--out")]
        [Description("It is in no gyle from now on.")]
        public bool Out { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            CommandLine.NoneLacksItsValue(("--book", "a file", Book), ("--gyle", "a gyle", Gyle)) is { Successful: false } lacking ? lacking
            : Out == (Gyle is not null) ? ValidationResult.Error("Say where it goes: either --gyle GYLE or --out.")
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (await settings.OpenAsync("with devices in it", cancellationToken) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        if (await FoundDevice.DeviceAsync(book, settings.Name, cancellationToken) is not { } device)
        {
            return 1;
        }

        (long Portion, string Name)? into = settings.Gyle is { } called ? await FoundGyle.FindAsync(book, called, cancellationToken) : null;
        if (settings.Gyle is not null && into is null)
        {
            return 1;
        }

        await book.Devices.MoveAsync(device.Id, into?.Portion, cancellation: cancellationToken);
        Console.WriteLine(CommandLine.OneLine(into is { } there ? $"\"{device.Name}\" is in \"{there.Name}\" from now on." : $"\"{device.Name}\" is in no gyle from now on; what it sends is kept all the same."));
        return 0;
    }
}

using System.ComponentModel;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>What every verb takes that is about one gyle of the book.</summary>
internal abstract class GyleSettings : BookOption
{
    /// <summary>The gyle.</summary>
    [CommandArgument(0, "<GYLE>")]
    [Description("A gyle of the book by its name, or by how its name begins.")]
    public required string Gyle { get; init; }

    /// <inheritdoc/>
    public override ValidationResult Validate() => CommandLine.NoneLacksItsValue([("--book", "a file", Book), .. Valued]);

    /// <summary>Options that need a value after them: name, what it is, what was typed.</summary>
    protected virtual IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [];
}

/// <summary>A verb about one gyle: finds it, or says why not.</summary>
/// <typeparam name="TSettings">What it takes.</typeparam>
internal abstract class GyleVerb<TSettings> : AsyncCommand<TSettings>
    where TSettings : GyleSettings
{
    /// <inheritdoc/>
    public sealed override async Task<int> ExecuteAsync(CommandContext context, TSettings settings, CancellationToken cancellationToken)
    {
        if (await settings.OpenAsync("with gyles in it", cancellationToken) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        GyleDesk desk = new(book, TimeProvider.System);
        if (await FoundGyle.OneAsync(book, settings.Gyle, cancellationToken) is not { } line)
        {
            return 1;
        }

        if (await desk.OpenAsync(line.Id, cancellationToken) is not { } gyle)
        {
            Console.Error.WriteLine(CommandLine.OneLine($"\"{line.Name}\" has not started, or its plan cannot be read."));
            return 1;
        }

        return await TellAsync(desk, gyle, settings, cancellationToken);
    }

    /// <summary>Does it.</summary>
    /// <returns>The exit code.</returns>
    protected abstract Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, TSettings settings, CancellationToken cancellation);
}

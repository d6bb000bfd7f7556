using System.ComponentModel;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>What backup and restore take: the copy, and which book.</summary>
internal sealed class BookSettings : CommandSettings
{
    /// <summary>The copy.</summary>
    [CommandArgument(0, "<FILE>")]
    [Description("The copy's file.")]
    public required string File { get; init; }

    /// <summary>The book's file.</summary>
    [CommandOption("--book <FILE>")]
    [Description("The book's file. Without it, the book in your data folder.")]
    public string? Book { get; init; }

    /// <summary>Whether to copy what is damaged.</summary>
    [CommandOption("--even-damaged")]
    [Description("Copy the book although something in it is damaged.")]
    public bool EvenDamaged { get; init; }

    /// <inheritdoc/>
    public override ValidationResult Validate() => CommandLine.NoneLacksItsValue(("--book", "a file", Book));
}

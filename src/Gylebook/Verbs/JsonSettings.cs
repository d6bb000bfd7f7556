using System.ComponentModel;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>What every verb takes whose answer a program may read.</summary>
internal abstract class JsonSettings : CommandSettings
{
    /// <summary>Whether to write JSON.</summary>
    [CommandOption("--json")]
    [Description("Write one JSON object instead of text.")]
    public bool Json { get; init; }
}

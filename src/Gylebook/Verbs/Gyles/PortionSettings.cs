using System.ComponentModel;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>What every verb takes that is about one portion of a gyle, where its beer is divided.</summary>
internal abstract class PortionSettings : GyleSettings
{
    /// <summary>The portion.</summary>
    [CommandOption("--portion <NAME>")]
    [Description("Which portion, where the beer is divided.")]
    public string? Portion { get; init; }

    /// <inheritdoc/>
    protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [("--portion", "a name", Portion)];

    /// <summary>Says what is wrong with the portion.</summary>
    /// <param name="gyle">The gyle.</param>
    /// <param name="isNeeded">Whether one has to be named where the beer is divided.</param>
    /// <returns>Whether something is.</returns>
    internal bool IsWrong(OpenGyle gyle, bool isNeeded)
    {
        string known = string.Join(", ", gyle.Division.Portions.Select(portion => portion.Name));
        string? fault = Portion is not null && !gyle.Division.IsDivided ? $"--portion: {Portion}; the beer of this gyle is not divided."
            : Portion is not null && gyle.Division.Find(Portion) is null ? $"--portion: {Portion}; must be one of {known}."
            : Portion is null && isNeeded && gyle.Division.IsDivided ? $"--portion: say which; the beer is divided into {known}." : null;
        if (fault is not null)
        {
            Console.Error.WriteLine(CommandLine.OneLine(fault));
        }

        return fault is not null;
    }
}

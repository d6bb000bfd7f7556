using Gylebook.Gyles;

namespace Gylebook.Web.Features.Gyles;

/// <summary>How far a gyle is, as pages say it.</summary>
internal static class GyleWords
{
    /// <summary>In a word or two.</summary>
    public static string Of(GyleStatus status) => status switch
    {
        GyleStatus.Planned => "planned",
        GyleStatus.Brewing => "brew day",
        GyleStatus.Fermenting => "fermenting",
        GyleStatus.Packaged => "packaged",
        GyleStatus.Finished => "finished",
        _ => "poured away",
    };
}

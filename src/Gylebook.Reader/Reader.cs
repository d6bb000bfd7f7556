using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using Gylebook.Site.Recasting;

[assembly: SupportedOSPlatform("browser")]

namespace Gylebook.Reader;

/// <summary>The door between a published page's script and the engine.</summary>
internal static partial class Reader
{
    private static RecastDesk? Desk;

    private static void Main()
    {
        // The page calls when it has something to ask.
    }

    /// <summary>Opens what was given out; false where this engine cannot read it.</summary>
    [JSExport]
    internal static bool Open(string publication) => (Desk = RecastDesk.Open(publication)) is not null;

    /// <summary>The answer for an address, as JSON.</summary>
    [JSExport]
    internal static string Answer(string query) => Desk!.Answer(query);
}

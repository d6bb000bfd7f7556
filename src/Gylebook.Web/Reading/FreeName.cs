using System.Globalization;
using Gylebook.Store;

namespace Gylebook.Web.Reading;

/// <summary>Names for what is made at a press of a button.</summary>
internal static class FreeName
{
    /// <summary>The name wanted, or the first of "name 2", "name 3" that no other sheet has.</summary>
    public static string Of(string wanted, IEnumerable<Sheet> others)
    {
        HashSet<string> taken = [.. others.Select(sheet => sheet.Name)];
        return Enumerable.Range(1, taken.Count + 1)
            .Select(n => n == 1 ? wanted : string.Create(CultureInfo.InvariantCulture, $"{wanted} {n}"))
            .First(name => !taken.Contains(name));
    }
}

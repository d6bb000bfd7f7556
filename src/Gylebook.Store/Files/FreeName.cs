using System.Globalization;

namespace Gylebook.Store;

/// <summary>Names for what is made at a press of a button.</summary>
public static class FreeName
{
    /// <summary>The name wanted, or the first of "name 2", "name 3" that no other sheet has.</summary>
    public static string Of(string wanted, IEnumerable<Sheet> others) => Of(wanted, others.Select(sheet => sheet.Name));

    /// <summary>The name wanted, or the first of "name 2", "name 3" that none of those is.</summary>
    public static string Of(string wanted, IEnumerable<string> others)
    {
        HashSet<string> taken = [.. others.Select(NameSearch.Fold)];
        return Enumerable.Range(1, taken.Count + 1)
            .Select(n => n == 1 ? wanted : string.Create(CultureInfo.InvariantCulture, $"{wanted} {n}"))
            .First(name => !taken.Contains(NameSearch.Fold(name)));
    }
}

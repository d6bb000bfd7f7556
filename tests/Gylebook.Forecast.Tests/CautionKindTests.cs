using System.Text.RegularExpressions;
using Gylebook.Engine.State;
using Gylebook.Recipes;
using Gylebook.Tests.Shared;

namespace Gylebook.Forecast.Tests;

/// <summary>The one table that says how loudly each sort of caution speaks.</summary>
public sealed partial class CautionKindTests
{
    [Fact]
    public void Every_sort_is_used_by_the_program_and_each_once()
    {
        string source = string.Join('\n', Directory.EnumerateFiles(RepositoryFile.PathOf("src"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal) && Path.GetFileName(file) != "CautionKinds.cs")
            .Select(File.ReadAllText));
        string[] unused = [.. CautionKinds.All.Select(kind => kind.Code)
            .Where(code => !source.Contains($"\"{code}\"", StringComparison.Ordinal) && !source.Contains($"\"{code[..(code.IndexOf('.') + 1)]}\" +", StringComparison.Ordinal))];
        Assert.Empty(unused);
        Assert.Equal(CautionKinds.All.Count, CautionKinds.All.Select(kind => kind.Code).Distinct().Count());
    }

    [Fact]
    public void A_mark_is_a_few_words_without_a_code()
    {
        Assert.All(CautionKinds.All, kind =>
        {
            Assert.InRange(kind.Mark.Split(' ').Length, 1, 6);
            Assert.DoesNotMatch(CodeLike(), kind.Mark);
        });
    }

    [Fact]
    public void What_poisons_bursts_or_stops_the_yeast_speaks_in_full()
    {
        string[] grave =
        [
            "pressure.glass", "pressure.keg", "bottle.strayYeast", "nutmeg.dose", "coumarin.cassia", "coumarin.tonka",
            "safrole.calamus", "pits.cyanide", "preservative.sorbate", "preservative.benzoate", "yeast.tolerance", "alcohol.little", "souring.germs",
        ];
        Assert.All(grave, code => Assert.Equal(CautionWeight.Grave, CautionKinds.Of(code).Weight));
        Assert.All(CautionKinds.All.Where(kind => kind.Severity == Severity.Error), kind => Assert.Equal(CautionWeight.Grave, kind.Weight));
    }

    [Fact]
    public void Sugar_to_prime_is_a_mark_and_speaks_in_full_once_a_bottle_cannot_bear_it()
    {
        Caution primed = new("bottle.unfermentedSugar", Stage.Package, "Gas.", "stoichiometry");
        Assert.False(primed.IsGrave);
        Assert.True((primed with { Severity = Severity.Error }).IsGrave);
    }

    [Fact]
    public void A_caution_nobody_has_weighed_is_refused() =>
        Assert.Contains("no.such", Assert.Throws<ArgumentOutOfRangeException>(() => CautionKinds.Of("no.such")).Message, StringComparison.Ordinal);

    [GeneratedRegex(@"[a-z]\.[a-z]")]
    private static partial Regex CodeLike();
}

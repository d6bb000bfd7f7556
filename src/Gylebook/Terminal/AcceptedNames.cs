using Gylebook.Forecast.Learning;

namespace Gylebook.Terminal;

/// <summary>Which figures a brewer accepts, read from what was typed: whole names, or their last part where it means one.</summary>
internal static class AcceptedNames
{
    /// <summary>Reads them; none for null.</summary>
    /// <returns>False when one cannot be accepted: <paramref name="problem"/> says which, and why.</returns>
    public static bool TryRead(string? typed, IReadOnlyList<ProposedFigure> figures, out IReadOnlyList<string> names, out string problem)
    {
        List<string> read = [];
        names = read;
        problem = "";
        if (typed is null)
        {
            return true;
        }

        foreach (string one in typed.Split(',', StringSplitOptions.TrimEntries))
        {
            ProposedFigure[] meant = [.. figures.Where(figure => IsMeant(figure, one))];
            problem = meant switch
            {
                [] => $"--accept: \"{one}\"; there are {string.Join(", ", figures.Where(figure => figure.CanBeAccepted).Select(figure => figure.Name))}.",
                [{ IsTaught: false } untaught] => $"--accept: {untaught.Name}; these gyles taught nothing about it, so the kit is left as it is.",
                [{ CanBeAccepted: false } yeast] => $"--accept: {yeast.Name}; it is the yeast's, and no kit states it.",
                [var figure] => Taken(read, figure),
                _ => $"--accept: \"{one}\" may mean {string.Join(" or ", meant.Select(figure => figure.Name))}; write one of them whole.",
            };
            if (problem.Length > 0)
            {
                return false;
            }
        }

        return true;
    }

    private static string Taken(List<string> read, ProposedFigure figure)
    {
        read.Add(figure.Name);
        return "";
    }

    private static bool IsMeant(ProposedFigure figure, string typed) => new[] { figure.Name, figure.Parameter.Id }
        .Any(name => string.Equals(name, typed, StringComparison.OrdinalIgnoreCase) || string.Equals(name[(name.LastIndexOf('.') + 1)..], typed, StringComparison.OrdinalIgnoreCase));
}

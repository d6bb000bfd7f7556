using Gylebook.Recipes;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;

namespace Gylebook.Web.Reading;

/// <summary>The door between a page and a reckoning: what is thrown inside comes out as a finding, and the page goes on.</summary>
/// <param name="log">Is told the fault with the input that did it; null for nobody.</param>
public sealed class ReckoningDoor(ILogger? log = null)
{
    private readonly ILogger _log = log ?? NullLogger.Instance;

    /// <summary>Reckons.</summary>
    /// <typeparam name="T">What comes of it.</typeparam>
    /// <param name="work">The reckoning.</param>
    /// <param name="input">All that it was given, as text, for whoever mends it.</param>
    /// <param name="problem">Why nothing came of it; null when something did.</param>
    public T? Reckon<T>(Func<T> work, Func<string> input, out Finding? problem)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(input);
        try
        {
            problem = null;
            return work();
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            _log.NotReckoned(fault, input());
            problem = ProblemOf(fault);
            return null;
        }
    }

    /// <summary>A reckoning that told a failure of its own as a finding: the terminal is told the rest.</summary>
    /// <param name="failure">What failed; null when nothing did.</param>
    /// <param name="input">All that it was given, as text.</param>
    public void Note(Exception? failure, Func<string> input)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (failure is not null)
        {
            _log.NotReckoned(failure, input());
        }
    }

    private static Finding ProblemOf(Exception fault)
    {
        string why = fault.Message.Split('\n')[0].Trim().TrimEnd('.');
        return new Finding(
            "reckoning.failed", Severity.Error, "",
            $"This cannot be reckoned: {why}. The text is safe; undo or change it. That it was not said better is a fault of Gylebook, and the terminal holds what its makers need to know.");
    }
}

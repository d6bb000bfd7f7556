using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Recipes.Forms;
using Gylebook.Science.Quantities;
using Gylebook.Web.Widgets.Fields;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>What is asked of a food, as fields: it stands in the page's address and in no file.</summary>
/// <param name="label">The desk the food lies on.</param>
/// <param name="ask">Puts a question into the address.</param>
internal sealed class QuestionDesk(LabelDesk label, Func<FoodQuestion, Task> ask) : IFieldDesk
{
    /// <summary>How much of the food.</summary>
    public const string Amount = "amount";

    /// <summary>Into how much.</summary>
    public const string Into = "into";

    private readonly Dictionary<string, (string Text, Finding Why)> _unread = [];

    /// <inheritdoc/>
    public Shown Shown => label.Shown;

    /// <summary>Whether it is about the food on that desk.</summary>
    public bool IsOn(LabelDesk desk) => label == desk;

    /// <inheritdoc/>
    public string? TextAt(string path) =>
        _unread.TryGetValue(path, out (string Text, Finding) kept) ? kept.Text : path == Amount ? label.Amount.Text : label.Asked.Into.Text;

    /// <inheritdoc/>
    public Field? FieldAt(string path) => null;

    /// <inheritdoc/>
    public IReadOnlyList<Finding> At(string path) => _unread.TryGetValue(path, out (string, Finding Why) kept) ? [kept.Why] : [];

    /// <inheritdoc/>
    public void Focus(object field)
    {
    }

    /// <inheritdoc/>
    public void Blur(object field)
    {
    }

    /// <inheritdoc/>
    public void Preview(string path, string text)
    {
        if (Read(path, text, out _) is { } question)
        {
            label.Ask(question);
        }
    }

    /// <inheritdoc/>
    public async Task CommitAsync(object field, string path, string? text)
    {
        _unread.Remove(path);
        if (Read(path, text, out string problem) is { } question)
        {
            await ask(question);
        }
        else
        {
            _unread[path] = (text!, new Finding("quantity.unread", Severity.Error, path, problem));
        }
    }

    /// <summary>Emptied, the amount is the family's usual one again; the batch has none that is usual, and stays as it was.</summary>
    private FoodQuestion? Read(string path, string? text, out string problem)
    {
        problem = "";
        if (string.IsNullOrWhiteSpace(text))
        {
            return path == Amount ? label.Asked with { Amount = null } : label.Asked;
        }

        return path == Amount
            ? Above0(text, "0 g", out Entered<Mass> amount, out problem) ? label.Asked with { Amount = amount } : null
            : Above0(text, "0 L", out Entered<VolumeAt20C> into, out problem) ? label.Asked with { Into = into } : null;
    }

    private static bool Above0<T>(string text, string nothing, out Entered<T> entered, out string problem)
        where T : struct, IQuantity<T>
    {
        bool isRead = UnitTable.TryParse(text, out entered, out problem);
        if (isRead && entered.Value.Equals(default(T)))
        {
            problem = $"{text}; must be above {nothing}";
        }

        return problem.Length == 0;
    }
}

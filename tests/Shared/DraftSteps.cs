using Gylebook.Recipes.Editing;

namespace Gylebook.Tests.Shared;

/// <summary>Edits of a water plan one after the other, as somebody makes them who asks for no label.</summary>
internal static class DraftSteps
{
    public static WaterDraft Typed(this WaterDraft draft, string path, string text) => draft.Type(path, text)?.After ?? draft;

    public static WaterDraft Added(this WaterDraft draft, string list, params IReadOnlyList<(string Key, string Text)> fields) => draft.AddItem(list, fields).After;
}

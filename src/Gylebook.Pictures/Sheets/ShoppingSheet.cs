namespace Gylebook.Pictures.Sheets;

/// <summary>What to bring home for a brew, all in words, with boxes to tick. Written by <see cref="ShoppingSheetHtml"/>.</summary>
/// <param name="Name">What the brew is called.</param>
/// <param name="ToBuy">What the larder lacks.</param>
/// <param name="ToLook">What the larder does not know.</param>
/// <param name="AtHand">What is there.</param>
/// <param name="Cost">What it would cost, in a sentence; empty where nobody knows.</param>
public sealed record ShoppingSheet(string Name, IReadOnlyList<ShoppingRow> ToBuy, IReadOnlyList<ShoppingRow> ToLook, IReadOnlyList<ShoppingRow> AtHand, string Cost);

/// <summary>A thing on the list.</summary>
/// <param name="What">Its name.</param>
/// <param name="Take">How much to take: packs where it is sold in such.</param>
/// <param name="Wanted">How much the brew wants; empty where that is the same.</param>
/// <param name="Cost">What it would cost; empty where nobody knows.</param>
public sealed record ShoppingRow(string What, string Take, string Wanted, string Cost);

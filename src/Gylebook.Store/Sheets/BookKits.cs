using Gylebook.Store.Rows;

namespace Gylebook.Store;

/// <summary>The brewer's kits.</summary>
public sealed class BookKits : BookSheets<KitRow>
{
    internal BookKits(BookAccess access)
        : base(access, new SheetDraftRows<KitRow>(BookNoun.Kit, "kit", DocumentText.Kit))
    {
    }
}

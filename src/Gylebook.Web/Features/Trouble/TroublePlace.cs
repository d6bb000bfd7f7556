namespace Gylebook.Web.Features.Trouble;

/// <summary>Where a note about a fault stands.</summary>
public enum TroublePlace
{
    /// <summary>In the place of a page.</summary>
    Page,

    /// <summary>In the place of a part of a page; the rest goes on.</summary>
    Part,

    /// <summary>Above a page that stands as it was.</summary>
    AbovePage,
}

namespace Gylebook.Store.Rows;

/// <summary>A row that carries a checksum of all it says; set when it is written, and by nobody else.</summary>
public interface ISealedRow
{
    /// <summary>Of all other columns: see <see cref="RowChecksum"/>.</summary>
    long Checksum { get; set; }
}

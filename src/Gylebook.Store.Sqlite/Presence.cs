namespace Gylebook.Store.Sqlite;

/// <summary>
/// A sign on the door, beside the book: many may be in the room, but whoever rebuilds it must be alone.
/// The system takes it down when a process ends, however it ends.
/// </summary>
internal static class Presence
{
    private static readonly TimeSpan Knock = TimeSpan.FromMilliseconds(50);

    /// <summary>Shares the book with others until disposed.</summary>
    /// <exception cref="BookUnavailableException">Somebody rebuilds it and does not finish.</exception>
    public static async Task<FileStream> ShareAsync(string file, TimeSpan patience, CancellationToken cancellation) =>
        (await OpenAsync(file, FileAccess.Read, FileShare.Read, () => true, patience, cancellation))!;

    /// <summary>Has the book alone until disposed; null when, while waiting, there was no more need to.</summary>
    /// <exception cref="BookUnavailableException">Others are in the room and do not leave.</exception>
    public static Task<FileStream?> AloneAsync(
        string file, Func<bool> isNeeded, TimeSpan patience, CancellationToken cancellation) =>
        OpenAsync(file, FileAccess.ReadWrite, FileShare.None, isNeeded, patience, cancellation);

    private static async Task<FileStream?> OpenAsync(
        string file,
        FileAccess access,
        FileShare share,
        Func<bool> isNeeded,
        TimeSpan patience,
        CancellationToken cancellation)
    {
        string sign = file + ".lock";
        for (TimeSpan left = patience; isNeeded(); left -= Knock)
        {
            try
            {
                return new FileStream(sign, FileMode.OpenOrCreate, access, share);
            }
            catch (IOException) when (left > TimeSpan.Zero && File.Exists(sign))
            {
                await Task.Delay(Knock, cancellation);
            }
            catch (IOException fault) when (File.Exists(sign))
            {
                throw Trouble.Open(file, fault);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                throw Trouble.NoAccess(file, fault);
            }
        }

        return null;
    }
}

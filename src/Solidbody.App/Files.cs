using System.Text;

namespace Solidbody.App;

/// <summary>Files as the commands meet them: read whole and checked for text, written whole or not at all.</summary>
public static class Files
{
    /// <summary>Largest instrument or shop file read, bytes: a thousand times a long one.</summary>
    public const int MostOfSource = 4 << 20;
    /// <summary>Largest program or index read, bytes: some twenty times a long one.</summary>
    public const int MostOfPacket = 200 << 20;

    /// <summary>The text of a file.</summary>
    /// <param name="path">Any path; a pipe is read as well.</param>
    /// <param name="most">Bytes read at most.</param>
    /// <exception cref="IOException">It is missing, a folder, too large, or not UTF-8 text; the message says which.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static string ReadText(string path, int most = MostOfSource)
    {
        var bytes = ReadAtMost(path, most);
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes.GetBuffer(), 0, (int)bytes.Length).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException e)
        {
            throw new IOException($"{path} is not UTF-8 text (byte {e.Index}). Save it as UTF-8.", e);
        }
    }

    /// <summary>The bytes of a file, whatever they are.</summary>
    /// <exception cref="IOException">It is missing, a folder or too large; the message says which.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static byte[] ReadBytes(string path, int most) => ReadAtMost(path, most).ToArray();

    /// <summary>Writes a new file; an existing one is never overwritten.</summary>
    /// <exception cref="IOException">It exists already, or cannot be written.</exception>
    public static void WriteNew(string path, string text)
    {
        if (Path.Exists(path)) throw new IOException($"{path} exists already and is left as it is. Give another name.");
        var temporary = path + ".part";
        try
        {
            File.WriteAllText(temporary, text, new UTF8Encoding(false));
            File.Move(temporary, path);
        }
        finally
        {
            File.Delete(temporary);
        }
    }

    /// <summary>Counted while reading: a pipe or a device does not tell its size.</summary>
    private static MemoryStream ReadAtMost(string path, int most)
    {
        if (Directory.Exists(path)) throw new IOException($"{path} is a folder, not a file. Give the path of the file itself.");
        if (!File.Exists(path)) throw new FileNotFoundException($"There is no file {path}. Check the path.");
        using var file = File.OpenRead(path);
        var bytes = new MemoryStream();
        var buffer = new byte[1 << 16];
        for (int read; (read = file.Read(buffer)) > 0;)
        {
            if (bytes.Length + read > most) throw new IOException($"{path} is larger than {most} bytes, and no more are read. Is it the right file?");
            bytes.Write(buffer, 0, read);
        }
        return bytes;
    }
}

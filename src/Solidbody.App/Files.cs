using System.Text;

namespace Solidbody.App;

/// <summary>Files as the commands meet them: read whole and checked for text, written whole or not at all.</summary>
public static class Files
{
    /// <summary>Largest instrument or shop file read, bytes: a thousand times a long one.</summary>
    private const long MostBytes = 4 << 20;

    /// <summary>The text of a person's file.</summary>
    /// <exception cref="IOException">It is missing, too large, or not UTF-8 text; the message says which.</exception>
    public static string ReadText(string path)
    {
        var file = new FileInfo(path);
        if (!file.Exists) throw new FileNotFoundException($"There is no file {path}. Give the path of a file that exists; 'solidbody new FILE' writes a starter.");
        if (file.Length > MostBytes) throw new IOException($"{path} has {file.Length} bytes; at most {MostBytes} are read. An instrument or shop file is a few thousand.");
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(File.ReadAllBytes(path)).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException e)
        {
            throw new IOException($"{path} is not UTF-8 text (byte {e.Index}). Save it as UTF-8.", e);
        }
    }

    /// <summary>Writes a new file; an existing one is never overwritten.</summary>
    /// <exception cref="IOException">It exists already, or cannot be written.</exception>
    public static void WriteNew(string path, string text)
    {
        if (File.Exists(path)) throw new IOException($"{path} exists already and is left as it is. Give another name.");
        var temporary = path + ".part";
        File.WriteAllText(temporary, text, new UTF8Encoding(false));
        File.Move(temporary, path);
    }
}

using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using Microsoft.Build.Framework;
using Microsoft.Build.Utilities;

/// <summary>Build task: writes the named font files, which lie end to end in one resource of a library, into a folder.</summary>
/// <remarks>
/// The resource starts with the length of its index, then version 2 and the number of entries; each entry is a path,
/// the offset of the file behind the index, and its size. Numbers are 32 bits, low byte first.
/// </remarks>
public sealed class CutFontFiles : Task
{
    public string Library { get; set; }

    public string[] Names { get; set; }

    public string Folder { get; set; }

    public override bool Execute()
    {
        byte[] block = ReadBlock();
        Dictionary<string, byte[]> files = FilesIn(block);
        Directory.CreateDirectory(Folder);
        foreach (string name in Names)
        {
            byte[] font;
            if (files.TryGetValue(name, out font))
                File.WriteAllBytes(Path.Combine(Folder, name), font);
            else
                Log.LogError("The font {0} is not in {1}; it holds {2}.", name, Library, string.Join(", ", files.Keys.OrderBy(key => key)));
        }
        return !Log.HasLoggedErrors;
    }

    private byte[] ReadBlock()
    {
        Assembly assembly = Assembly.Load(File.ReadAllBytes(Library));
        using (Stream stream = assembly.GetManifestResourceStream("!AvaloniaResources"))
        using (MemoryStream copy = new MemoryStream())
        {
            stream.CopyTo(copy);
            return copy.ToArray();
        }
    }

    private static Dictionary<string, byte[]> FilesIn(byte[] block)
    {
        Dictionary<string, byte[]> files = new Dictionary<string, byte[]>();
        using (BinaryReader reader = new BinaryReader(new MemoryStream(block)))
        {
            int start = reader.ReadInt32() + 4;
            if (reader.ReadInt32() != 2)
                throw new InvalidDataException("The index of the font resource is not of version 2.");
            for (int left = reader.ReadInt32(); left > 0; left--)
            {
                string path = reader.ReadString();
                int offset = reader.ReadInt32();
                int size = reader.ReadInt32();
                files[Path.GetFileName(path)] = block.Skip(start + offset).Take(size).ToArray();
            }
        }
        return files;
    }
}

Console.WriteLine("gudgeon");

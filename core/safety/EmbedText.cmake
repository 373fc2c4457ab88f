# Writes a C++ source that holds a text file, so that the program needs no file at run time.
#
#   cmake -DINPUT=<text file> -DOUTPUT=<source> -DHEADER=<include> -DFUNCTION=<name> -P EmbedText.cmake
#
# The text goes in byte by byte as escapes (no byte of it can then end the literal early), in lines of 64 bytes, in
# chunks of 16 KiB: compilers need not take a literal longer than 64 KiB.
file(READ ${INPUT} bytes HEX)
set(chunk_digits 32768)
string(LENGTH "${bytes}" digits)
set(chunks "")
set(start 0)
while(start LESS digits)
    string(SUBSTRING "${bytes}" ${start} ${chunk_digits} chunk)
    string(REGEX REPLACE "([0-9a-f][0-9a-f])" "\\\\x\\1" chunk "${chunk}")
    string(REPEAT "...." 64 line)
    string(REGEX REPLACE "(${line})" "\\1\"\n    \"" chunk "${chunk}")
    string(APPEND chunks "    \"${chunk}\",\n")
    math(EXPR start "${start} + ${chunk_digits}")
endwhile()
get_filename_component(input_name ${INPUT} NAME)
file(WRITE ${OUTPUT} "// Made from ${input_name} by EmbedText.cmake; changes belong there.
#include \"${HEADER}\"

#include <string_view>

namespace brinebell {

std::string ${FUNCTION}() {
    constexpr std::string_view kChunks[] = {
${chunks}};
    std::string text;
    for (const std::string_view chunk : kChunks) {
        text += chunk;
    }
    return text;
}

}  // namespace brinebell
")
